using System.Globalization;
using System.Text;
using HandsFree.Pages.Drawing;

namespace HandsFree.Pages.Html;

/// <summary>Draws as SVG, inside an HTML page.</summary>
internal sealed class SvgCanvas(double width, double height) : ICanvas
{
    private readonly StringBuilder drawn = new();

    /// <summary>The element.</summary>
    /// <param name="css">Its class.</param>
    /// <param name="says">What it shows, for who can't see it; null where the words stand beside it.</param>
    public string Element(string css, string? says)
    {
        string role = says is null ? "aria-hidden=\"true\"" : $"role=\"img\" aria-label=\"{Markup.Text(says)}\"";
        return $"<svg class=\"{css}\" {role} viewBox=\"0 0 {N(width)} {N(height)}\" width=\"{N(width)}pt\" height=\"{N(height)}pt\">{drawn}</svg>";
    }

    public void Line(IReadOnlyList<Spot> through, Stroke stroke) =>
        drawn.Append(CultureInfo.InvariantCulture, $"<polyline points=\"{Points(through)}\" fill=\"none\"{Edge(stroke)}/>");

    public void Shape(IReadOnlyList<Spot> corners, string? fill, Stroke? stroke) =>
        drawn.Append(CultureInfo.InvariantCulture, $"<polygon points=\"{Points(corners)}\" fill=\"{fill ?? "none"}\"{Edge(stroke)}/>");

    public void Circle(Spot centre, double radius, string? fill, Stroke? stroke) => drawn.Append(
        CultureInfo.InvariantCulture, $"<circle cx=\"{N(centre.X)}\" cy=\"{N(centre.Y)}\" r=\"{N(radius)}\" fill=\"{fill ?? "none"}\"{Edge(stroke)}/>");

    public void Text(Spot at, string text, TextStyle style)
    {
        string anchor = style.Anchor switch { Anchor.Middle => " text-anchor=\"middle\"", Anchor.End => " text-anchor=\"end\"", _ => "" };
        string weight = style.Bold ? " font-weight=\"bold\"" : "";
        drawn.Append(
            CultureInfo.InvariantCulture,
            $"<text x=\"{N(at.X)}\" y=\"{N(at.Y)}\" font-size=\"{N(style.Size)}\" fill=\"{style.Ink}\"{anchor}{weight}>{Markup.Text(text)}</text>");
    }

    private static string Points(IEnumerable<Spot> spots) => string.Join(' ', spots.Select(s => $"{N(s.X)},{N(s.Y)}"));

    private static string Edge(Stroke? stroke) => stroke is null
        ? ""
        : $" stroke=\"{stroke.Ink}\" stroke-width=\"{N(stroke.Width)}\"{(stroke.Dashed ? $" stroke-dasharray=\"{N(stroke.Width * 3)} {N(stroke.Width * 2)}\"" : "")}";

    private static string N(double number) => number.ToString("0.##", CultureInfo.InvariantCulture);
}
