using PdfSharp.Drawing;
using PdfSharp.Fonts;

namespace HandsFree.Pages.Pdf;

/// <summary>The one font of the pages, in the program itself, so that a page looks the same on every machine.</summary>
internal sealed class PageFonts : IFontResolver
{
    private const string Family = "Liberation Sans";
    private const string Regular = "LiberationSans-Regular";
    private const string Bold = "LiberationSans-Bold";

    /// <summary>Every letter that the font has can be written and read back, not only those of Western Europe.</summary>
    private static readonly XPdfFontOptions AllLetters = XPdfFontOptions.UnicodeDefault;

    static PageFonts() => GlobalFontSettings.FontResolver = new PageFonts();

    private PageFonts()
    {
    }

    /// <summary>The font of a size.</summary>
    public static XFont Of(double size, bool bold) => new(Family, size, bold ? XFontStyleEx.Bold : XFontStyleEx.Regular, AllLetters);

    /// <inheritdoc/>
    public byte[]? GetFont(string faceName)
    {
        using Stream? stream = typeof(PageFonts).Assembly.GetManifestResourceStream(faceName + ".ttf");
        if (stream is null)
        {
            return null;
        }

        using MemoryStream bytes = new();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }

    /// <inheritdoc/>
    public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic) => familyName == Family ? new(bold ? Bold : Regular) : null;
}
