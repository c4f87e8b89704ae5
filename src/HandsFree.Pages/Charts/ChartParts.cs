using HandsFree.Pages.Drawing;

namespace HandsFree.Pages.Charts;

/// <summary>What small and large charts have in common.</summary>
internal static class ChartParts
{
    /// <summary>The band of what is usual, with its edges.</summary>
    public static void Usual(ICanvas canvas, Chart chart, ChartFrame frame)
    {
        if (chart is { UsualLow: { } low, UsualHigh: { } high } && high > low)
        {
            canvas.Rectangle(frame.Left, frame.Y(high), frame.Width, frame.Y(low) - frame.Y(high), Ink.Band);
        }
    }

    /// <summary>Limits as dashed lines from edge to edge.</summary>
    public static void Limits(ICanvas canvas, ChartFrame frame, double width, params IEnumerable<double?> limits)
    {
        foreach (double number in limits.OfType<double>())
        {
            canvas.Segment(frame.Left, frame.Y(number), frame.Right, frame.Y(number), new(Ink.Black, width, Dashed: true));
        }
    }

    /// <summary>The readings that count, joined in the order of time; pressures are bars from the lower number to the upper one.</summary>
    public static void Course(ICanvas canvas, Chart chart, ChartFrame frame, double width)
    {
        List<ChartPoint> counting = [.. chart.Points.Where(p => p.Kind != PointKind.CountsNoMore)];
        if (counting.Exists(p => p.Lower is not null))
        {
            foreach (ChartPoint point in counting.Where(p => p.Lower is not null))
            {
                canvas.Segment(frame.X(point.At), frame.Y(point.Lower!.Value), frame.X(point.At), frame.Y(point.Value), new(Ink.Line, width));
            }
        }
        else if (counting.Count > 1)
        {
            canvas.Line([.. counting.Select(frame.Of)], new(Ink.Line, width));
        }
    }

    /// <summary>The reading itself.</summary>
    public static void Point(ICanvas canvas, ChartPoint point, ChartFrame frame, double radius)
    {
        Spot at = frame.Of(point);
        Stroke edge = new(Ink.Black, radius * 0.5);
        switch (point)
        {
            case { Kind: PointKind.CountsNoMore }:
                canvas.Cross(at, radius, new(Ink.Line, radius * 0.5));
                break;
            case { Side: not 0 }:
                bool recheck = point.Kind == PointKind.Recheck;
                canvas.Triangle(at, radius * 1.6, up: point.Side > 0, recheck ? Ink.White : Ink.Black, edge);
                break;
            case { Kind: PointKind.Recheck }:
                canvas.Circle(at, radius * 1.15, Ink.White, edge);
                break;
            default:
                canvas.Circle(at, radius, Ink.Black, null);
                break;
        }
    }
}
