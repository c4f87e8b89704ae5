using HandsFree.Pages.Texts;

namespace HandsFree.Pages.Html;

/// <summary>The HTML around a page's content: self-contained, without script, without anything from elsewhere.</summary>
internal static class PageShell
{
    /// <summary>Sans serif fonts of the same measures, so that a page breaks alike wherever it is printed.</summary>
    private const string Fonts = "\"Liberation Sans\", Arial, Helvetica, sans-serif";

    private static readonly Lazy<string> Css = new(() =>
    {
        using Stream stream = typeof(PageShell).Assembly.GetManifestResourceStream("page.css")!;
        using StreamReader reader = new(stream);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    });

    /// <summary>The whole document.</summary>
    /// <param name="title">Of the window.</param>
    /// <param name="paper">On which it is printed.</param>
    /// <param name="body">The content.</param>
    /// <param name="foot">On every sheet; where left out, that of pages with personal data.</param>
    public static string Document(string title, Paper paper, string body, string foot = PageTexts.Foot)
    {
        string css = Css.Value.Replace("FONTS", Fonts, StringComparison.Ordinal).Replace("PAPER", paper.Name, StringComparison.Ordinal)
            .Replace("FOOT", foot, StringComparison.Ordinal);
        return $"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta name="robots" content="noindex">
            <title>{Markup.Text(title)}</title>
            <style>
            {css}</style>
            </head>
            <body>
            {body}<p class="foot">{Markup.Text(foot)}</p>
            </body>
            </html>

            """;
    }
}
