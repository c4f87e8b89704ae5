namespace HandsFree.Pages.Drawing;

/// <summary>Something to draw on, in points from the top left. Charts and marks are drawn once, on the canvas of the HTML page (SVG) and
/// on that of the PDF.</summary>
public interface ICanvas
{
    /// <summary>A line of one or more pieces.</summary>
    void Line(IReadOnlyList<Spot> through, Stroke stroke);

    /// <summary>A closed shape.</summary>
    /// <param name="corners">Three or more.</param>
    /// <param name="fill">An ink, or null for none.</param>
    /// <param name="stroke">Its edge, or null for none.</param>
    void Shape(IReadOnlyList<Spot> corners, string? fill, Stroke? stroke);

    /// <summary>A circle.</summary>
    /// <param name="centre">Its centre.</param>
    /// <param name="radius">In points.</param>
    /// <param name="fill">An ink, or null for none.</param>
    /// <param name="stroke">Its edge, or null for none.</param>
    void Circle(Spot centre, double radius, string? fill, Stroke? stroke);

    /// <summary>A text on one line.</summary>
    /// <param name="at">On its base line.</param>
    /// <param name="text">The text.</param>
    /// <param name="style">How it is set.</param>
    void Text(Spot at, string text, TextStyle style);
}
