using System.Text.Encodings.Web;
using System.Text.Unicode;

namespace HandsFree.Pages.Html;

/// <summary>Text as HTML.</summary>
internal static class Markup
{
    private static readonly HtmlEncoder Encoder = HtmlEncoder.Create(UnicodeRanges.All);

    /// <summary>With everything escaped that means something in HTML.</summary>
    public static string Text(string text) => Encoder.Encode(text);
}
