using System.Text.Encodings.Web;
using System.Text.Unicode;
using HandsFree.Core.Files;

namespace HandsFree.Pages.Html;

/// <summary>Text as HTML.</summary>
internal static class Markup
{
    private static readonly HtmlEncoder Encoder = HtmlEncoder.Create(UnicodeRanges.All);

    /// <summary>With everything escaped that means something in HTML, and a mark for what steers (<see cref="PlainText"/>).</summary>
    public static string Text(string text) => Encoder.Encode(PlainText.Shown(text));
}
