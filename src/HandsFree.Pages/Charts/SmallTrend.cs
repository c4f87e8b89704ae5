using HandsFree.Pages.Drawing;

namespace HandsFree.Pages.Charts;

/// <summary>The small trend of one vital sign: two weeks at a glance, without axes. The limits are dashed (of a pressure those of the upper
/// number), what is usual is a grey band.</summary>
internal static class SmallTrend
{
    private const double Radius = 1.1;

    public static void Draw(ICanvas canvas, Chart chart, double left, double top, double width, double height)
    {
        ChartFrame frame = new(chart, left + 3, top + 2, width - 6, height - 4);
        canvas.Rectangle(left, top, width, height, null, new(Ink.Rule, 0.5));
        if (chart.Points.Count == 0)
        {
            canvas.Text(new(left + (width / 2), top + (height / 2) + 3), "none in 14 days", new(9, Ink: Ink.Black, Anchor: Anchor.Middle));
            return;
        }

        ChartParts.Usual(canvas, chart, frame);
        ChartParts.Limits(canvas, frame, 0.8, chart.Low, chart.High);
        ChartParts.Course(canvas, chart, frame, 0.7);
        ChartPoint? last = chart.Points.LastOrDefault(p => p.Kind != PointKind.CountsNoMore);
        foreach (ChartPoint point in chart.Points)
        {
            ChartParts.Point(canvas, point, frame, point == last ? Radius * 1.9 : Radius);
        }
    }
}
