using HandsFree.Pages.Drawing;

namespace HandsFree.Pages.Html;

/// <summary>A mark in HTML: the shape, and the word beside it.</summary>
internal static class MarkHtml
{
    private const double Size = 11;

    public static string Shape(Mark mark)
    {
        SvgCanvas canvas = new(Size, Size);
        Marks.Draw(canvas, mark, new(Size / 2, Size / 2), Size - 1.5);
        return canvas.Element("mark", null);
    }

    public static string Of(Mark mark) => $"{Shape(mark)}<span class=\"word\">{Marks.Word(mark)}</span>";
}
