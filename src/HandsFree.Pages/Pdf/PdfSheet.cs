using System.Globalization;
using HandsFree.Pages.Drawing;
using HandsFree.Pages.Texts;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace HandsFree.Pages.Pdf;

/// <summary>A PDF that is filled from top to bottom, page after page. Each set of pages is numbered by itself.</summary>
internal sealed class PdfSheet : IDisposable
{
    private const double Side = 12 / 25.4 * 72;
    private const double TopRoom = 12 / 25.4 * 72;
    private const double BottomRoom = 18 / 25.4 * 72;
    private const double Leading = 1.22;
    private readonly PdfDocument document = new();
    private readonly List<(PdfPage Page, int Set)> pages = [];
    private readonly Paper paper;
    private XGraphics? graphics;
    private int set;

    public PdfSheet(Paper paper, string title, DateTimeOffset at)
    {
        this.paper = paper;
        document.Info.Title = title;
        document.Info.Creator = "HandsFree";
        document.Info.CreationDate = at.DateTime;
        document.Language = "en";
    }

    /// <summary>Where the next thing begins, points from the top.</summary>
    public double Y { get; set; }

    /// <summary>The left edge of what is printed.</summary>
    public double Left => Side;

    /// <summary>The width of what is printed.</summary>
    public double Width => paper.Width - (2 * Side);

    /// <summary>The right edge of what is printed.</summary>
    public double Right => Left + Width;

    /// <summary>What stands at the top of each further page of a set; draws from <see cref="Y"/> on and moves it.</summary>
    public Action? RunningHead { get; set; }

    /// <summary>The page in hand.</summary>
    public PdfCanvas Canvas { get; private set; } = null!;

    /// <summary>How much of the page is left, in points.</summary>
    public double Room => Bottom - Y;

    private double Bottom => paper.Height - BottomRoom;

    /// <summary>Begins a set of pages.</summary>
    public void BeginSet()
    {
        set++;
        RunningHead = null;
        NewPage();
    }

    /// <summary>Begins a new page where less than that is left of this one.</summary>
    /// <returns>Whether it did.</returns>
    public bool Need(double height)
    {
        if (Y + height <= Bottom)
        {
            return false;
        }

        NewPage();
        RunningHead?.Invoke();
        return true;
    }

    /// <summary>A text over as many lines as it needs.</summary>
    /// <param name="text">The text.</param>
    /// <param name="style">How it is set.</param>
    /// <param name="left">Its left edge.</param>
    /// <param name="width">The room for a line.</param>
    public void Text(string text, TextStyle style, double left, double width)
    {
        foreach (string line in Wrapped(text, style, width))
        {
            Need(style.Size * Leading);
            Canvas.Text(new(left, Y + style.Size), line, style);
            Y += style.Size * Leading;
        }
    }

    /// <summary>The height of a text over as many lines as it needs.</summary>
    public double Height(string text, TextStyle style, double width) => Wrapped(text, style, width).Count * style.Size * Leading;

    /// <summary>A line across the page.</summary>
    public void Rule(double width, string ink) => Canvas.Segment(Left, Y, Right, Y, new(ink, width));

    /// <summary>The finished file.</summary>
    public byte[] Save()
    {
        graphics?.Dispose();
        graphics = null;
        foreach (IGrouping<int, (PdfPage Page, int Set)> numbered in pages.GroupBy(p => p.Set))
        {
            int count = numbered.Count();
            foreach ((PdfPage page, int number) in numbered.Select((p, i) => (p.Page, i + 1)))
            {
                Foot(page, number, count);
            }
        }

        using MemoryStream bytes = new();
        document.Save(bytes);
        return bytes.ToArray();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        graphics?.Dispose();
        document.Dispose();
    }

    private void NewPage()
    {
        graphics?.Dispose();
        PdfPage page = document.AddPage();
        page.Width = XUnit.FromPoint(paper.Width);
        page.Height = XUnit.FromPoint(paper.Height);
        pages.Add((page, set));
        graphics = XGraphics.FromPdfPage(page);
        Canvas = new PdfCanvas(graphics);
        Y = TopRoom;
    }

    private void Foot(PdfPage page, int number, int count)
    {
        using XGraphics foot = XGraphics.FromPdfPage(page, XGraphicsPdfPageOptions.Append);
        PdfCanvas canvas = new(foot);
        double y = paper.Height - BottomRoom + 8;
        canvas.Segment(Left, y, Right, y, new(Ink.Black, 0.75));
        canvas.Text(new(Left, y + 13), PageTexts.Foot, new(8.5));
        string text = string.Create(CultureInfo.InvariantCulture, $"page {number} of {count}");
        canvas.Text(new(Right, y + 13), text, new(10, Bold: true, Anchor: Anchor.End));
    }

    private List<string> Wrapped(string text, TextStyle style, double width)
    {
        List<string> lines = [];
        string line = "";
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries).SelectMany(w => Pieces(w, style, width)))
        {
            string longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && Canvas.Width(longer, style) > width)
            {
                lines.Add(line);
                line = word;
            }
            else
            {
                line = longer;
            }
        }

        return [.. lines, .. line.Length > 0 ? [line] : Array.Empty<string>()];
    }

    /// <summary>A word that is wider than a line is parted; nothing of it is left out.</summary>
    private IEnumerable<string> Pieces(string word, TextStyle style, double width)
    {
        while (Canvas.Width(word, style) > width && word.Length > 1)
        {
            int fits = Enumerable.Range(1, word.Length - 1).TakeWhile(n => Canvas.Width(word[..n], style) <= width).DefaultIfEmpty(1).Last();
            yield return word[..fits];
            word = word[fits..];
        }

        yield return word;
    }
}
