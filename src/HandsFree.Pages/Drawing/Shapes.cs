namespace HandsFree.Pages.Drawing;

/// <summary>Shapes made of the canvas's own.</summary>
internal static class Shapes
{
    public static void Rectangle(this ICanvas canvas, double x, double y, double width, double height, string? fill, Stroke? stroke = null) =>
        canvas.Shape([new(x, y), new(x + width, y), new(x + width, y + height), new(x, y + height)], fill, stroke);

    public static void Segment(this ICanvas canvas, double x1, double y1, double x2, double y2, Stroke stroke) =>
        canvas.Line([new(x1, y1), new(x2, y2)], stroke);

    /// <summary>A triangle around a centre; its tip points up, or down.</summary>
    public static void Triangle(this ICanvas canvas, Spot centre, double radius, bool up, string? fill, Stroke? stroke = null)
    {
        double tip = up ? -radius : radius;
        canvas.Shape([new(centre.X, centre.Y + tip), new(centre.X + radius, centre.Y - (tip * 0.8)), new(centre.X - radius, centre.Y - (tip * 0.8))], fill, stroke);
    }

    public static void Diamond(this ICanvas canvas, Spot centre, double radius, string? fill, Stroke? stroke = null) => canvas.Shape(
        [new(centre.X, centre.Y - radius), new(centre.X + radius, centre.Y), new(centre.X, centre.Y + radius), new(centre.X - radius, centre.Y)], fill, stroke);

    public static void Cross(this ICanvas canvas, Spot centre, double radius, Stroke stroke)
    {
        canvas.Segment(centre.X - radius, centre.Y - radius, centre.X + radius, centre.Y + radius, stroke);
        canvas.Segment(centre.X - radius, centre.Y + radius, centre.X + radius, centre.Y - radius, stroke);
    }
}
