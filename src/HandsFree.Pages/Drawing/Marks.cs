namespace HandsFree.Pages.Drawing;

/// <summary>The shapes and the words of the marks.</summary>
public static class Marks
{
    /// <summary>The word.</summary>
    public static string Word(Mark mark) => mark switch
    {
        Mark.ReportNow => "REPORT NOW",
        Mark.ReportThisShift => "REPORT THIS SHIFT",
        Mark.Recheck => "RECHECK",
        Mark.High => "HIGH",
        Mark.Low => "LOW",
        Mark.NotTaken => "NOT TAKEN",
        Mark.LeftOpen => "LEFT OPEN",
        Mark.NotComplete => "NOT COMPLETE",
        Mark.NotVisited => "NOT VISITED",
        Mark.Away => "AWAY",
        Mark.Outside => "OUTSIDE",
        Mark.Acknowledged => "ACKNOWLEDGED",
        _ => throw new ArgumentOutOfRangeException(nameof(mark), mark, "no such mark"),
    };

    /// <summary>Draws the shape into a square around a centre.</summary>
    /// <param name="canvas">Where.</param>
    /// <param name="mark">Which.</param>
    /// <param name="centre">The middle of the shape.</param>
    /// <param name="size">Its width in points.</param>
    public static void Draw(ICanvas canvas, Mark mark, Spot centre, double size)
    {
        double radius = size / 2;
        double side = size * 0.84;
        Stroke edge = new(Ink.Black, size / 8);
        void Square(string? fill) => canvas.Rectangle(centre.X - (side / 2), centre.Y - (side / 2), side, side, fill, edge);
        switch (mark)
        {
            case Mark.ReportNow:
                Square(Ink.Black);
                break;
            case Mark.ReportThisShift:
                canvas.Diamond(centre, radius, Ink.Black);
                break;
            case Mark.Recheck:
                canvas.Circle(centre, radius * 0.85, Ink.White, edge);
                canvas.Circle(centre, radius * 0.3, Ink.Black, null);
                break;
            case Mark.High or Mark.Low:
                canvas.Triangle(centre, radius, up: mark == Mark.High, Ink.Black);
                break;
            case Mark.NotTaken:
                Square(Ink.White);
                canvas.Cross(centre, side / 2, edge);
                break;
            case Mark.LeftOpen:
                canvas.Diamond(centre, radius * 0.9, Ink.White, edge);
                break;
            case Mark.NotComplete:
                Square(Ink.White);
                canvas.Rectangle(centre.X - (side / 2), centre.Y - (side / 2), side / 2, side, Ink.Black, edge);
                break;
            case Mark.NotVisited:
                Square(Ink.White);
                break;
            case Mark.Away:
                canvas.Circle(centre, radius * 0.85, Ink.White, edge);
                break;
            case Mark.Outside:
                canvas.Triangle(centre, radius * 0.9, up: true, Ink.White, edge);
                break;
            case Mark.Acknowledged:
                canvas.Line([new(centre.X - radius, centre.Y), new(centre.X - (radius * 0.2), centre.Y + (radius * 0.8)), new(centre.X + radius, centre.Y - (radius * 0.8))], edge with { Width = size / 5 });
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(mark), mark, "no such mark");
        }
    }
}
