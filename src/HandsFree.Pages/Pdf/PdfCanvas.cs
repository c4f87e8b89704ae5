using HandsFree.Core.Files;
using HandsFree.Pages.Drawing;
using PdfSharp.Drawing;

namespace HandsFree.Pages.Pdf;

/// <summary>Draws on a page of a PDF.</summary>
internal sealed class PdfCanvas(XGraphics graphics) : ICanvas
{
    public void Line(IReadOnlyList<Spot> through, Stroke stroke) => graphics.DrawLines(Pen(stroke), Points(through));

    public void Shape(IReadOnlyList<Spot> corners, string? fill, Stroke? stroke)
    {
        XPoint[] points = Points(corners);
        if (fill is not null)
        {
            graphics.DrawPolygon(Brush(fill), points, XFillMode.Winding);
        }

        if (stroke is not null)
        {
            graphics.DrawPolygon(Pen(stroke), points);
        }
    }

    public void Circle(Spot centre, double radius, string? fill, Stroke? stroke)
    {
        XRect around = new(centre.X - radius, centre.Y - radius, 2 * radius, 2 * radius);
        if (fill is not null)
        {
            graphics.DrawEllipse(Brush(fill), around);
        }

        if (stroke is not null)
        {
            graphics.DrawEllipse(Pen(stroke), around);
        }
    }

    public void Text(Spot at, string text, TextStyle style)
    {
        double width = style.Anchor == Anchor.Start ? 0 : Width(text, style);
        double x = at.X - (style.Anchor switch { Anchor.Middle => width / 2, Anchor.End => width, _ => 0 });
        graphics.DrawString(PlainText.Shown(text), PageFonts.Of(style.Size, style.Bold), Brush(style.Ink), new XPoint(x, at.Y));
    }

    /// <summary>How wide a text is, in points.</summary>
    public double Width(string text, TextStyle style) => graphics.MeasureString(text, PageFonts.Of(style.Size, style.Bold)).Width;

    private static XPoint[] Points(IEnumerable<Spot> spots) => [.. spots.Select(s => new XPoint(s.X, s.Y))];

    private static XSolidBrush Brush(string ink) => new(Colour(ink));

    private static XPen Pen(Stroke stroke)
    {
        XPen pen = new(Colour(stroke.Ink), stroke.Width) { LineJoin = XLineJoin.Round };
        if (stroke.Dashed)
        {
            pen.DashPattern = [3, 2];
        }

        return pen;
    }

    private static XColor Colour(string ink) => XColor.FromArgb(255, Part(ink, 1), Part(ink, 3), Part(ink, 5));

    private static int Part(string ink, int from) => Convert.ToInt32(ink.Substring(from, 2), 16);
}
