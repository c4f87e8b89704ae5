using System.Globalization;
using HandsFree.Pages.Drawing;

namespace HandsFree.Pages.Charts;

/// <summary>The large chart of one vital sign, with axes: every reading of a month.</summary>
internal static class MonthChart
{
    private const double AxisText = 10;
    private const double LeftRoom = 34;
    private const double RightRoom = 78;
    private const double BottomRoom = 15;
    private const double Radius = 1.9;

    /// <summary>Draws it.</summary>
    /// <param name="canvas">Where.</param>
    /// <param name="chart">What.</param>
    /// <param name="width">Of the whole, with the axes.</param>
    /// <param name="height">Of the whole, with the axes.</param>
    /// <param name="left">Its left edge.</param>
    /// <param name="top">Its upper edge.</param>
    public static void Draw(ICanvas canvas, Chart chart, double left, double top, double width, double height)
    {
        ChartFrame frame = new(chart, left + LeftRoom, top + 4, width - LeftRoom - RightRoom, height - BottomRoom - 4);
        Days(canvas, chart, frame);
        if (chart.Points.Count == 0)
        {
            canvas.Text(new(frame.Left + (frame.Width / 2), frame.Top + (frame.Height / 2)), "none in this time", new(AxisText, Ink: Ink.Grey, Anchor: Anchor.Middle));
            return;
        }

        ChartParts.Usual(canvas, chart, frame);
        Numbers(canvas, frame);
        ChartParts.Limits(canvas, frame, 1, chart.Low, chart.High);
        ChartParts.Limits(canvas, frame, 0.6, chart.LowerLow, chart.LowerHigh);
        Named(canvas, chart, frame);
        ChartParts.Course(canvas, chart, frame, 0.8);
        foreach (ChartPoint point in chart.Points)
        {
            if (point.CorrectedTo is { } right)
            {
                canvas.Segment(frame.X(point.At), frame.Y(point.Value), frame.X(point.At), frame.Y(right), new(Ink.Line, 0.7, Dashed: true));
            }

            ChartParts.Point(canvas, point, frame, Radius);
        }

        Letters(canvas, chart, frame);
    }

    private static void Numbers(ICanvas canvas, ChartFrame frame)
    {
        if (frame.Most - frame.Least is var span && span <= 0)
        {
            return;
        }

        double step = Step(span / Math.Max(2, frame.Height / 18));
        for (double number = Math.Ceiling(frame.Least / step) * step; number <= frame.Most; number += step)
        {
            canvas.Segment(frame.Left - 3, frame.Y(number), frame.Left, frame.Y(number), new(Ink.Line, 0.7));
            string text = number.ToString(step < 1 ? "0.0" : "0", CultureInfo.InvariantCulture);
            canvas.Text(new(frame.Left - 5, frame.Y(number) + (AxisText * 0.35)), text, new(AxisText, Ink: Ink.Grey, Anchor: Anchor.End));
        }

        canvas.Segment(frame.Left, frame.Top, frame.Left, frame.Bottom, new(Ink.Line, 0.7));
    }

    private static void Days(ICanvas canvas, Chart chart, ChartFrame frame)
    {
        canvas.Segment(frame.Left, frame.Bottom, frame.Right, frame.Bottom, new(Ink.Line, 0.7));
        DateTimeOffset day = new DateTimeOffset(chart.Until.Date, chart.Until.Offset);
        for (int back = 0; day.AddDays(-back) > chart.From; back++)
        {
            DateTimeOffset at = day.AddDays(-back);
            bool named = back % 7 == 0;
            canvas.Segment(frame.X(at), frame.Bottom, frame.X(at), frame.Bottom + (named ? 4 : 2), new(Ink.Line, 0.7));
            if (named && frame.X(at) < frame.Right + 2)
            {
                canvas.Text(new(frame.X(at), frame.Bottom + 13), at.ToString("d MMM", CultureInfo.InvariantCulture), new(AxisText, Ink: Ink.Grey, Anchor: Anchor.Middle));
            }
        }
    }

    /// <summary>The numbers of the limits, and of what is usual, at the right; what would cover another moves down.</summary>
    private static void Named(ICanvas canvas, Chart chart, ChartFrame frame)
    {
        string Number(double number) => Math.Round(number, 1).ToString("0.#", CultureInfo.InvariantCulture);
        List<(double Y, string Text, bool Bold)> names = [];
        void Add(double? number, string text, bool bold)
        {
            if (number is { } n)
            {
                names.Add((frame.Y(n), $"{text} {Number(n)}", bold));
            }
        }

        Add(chart.High, "limit", true);
        Add(chart.Low, "limit", true);
        Add(chart.LowerHigh, "diastolic", true);
        Add(chart.LowerLow, "diastolic", true);
        if (chart is { UsualLow: { } low, UsualHigh: { } high })
        {
            names.Add((frame.Y((low + high) / 2), low == high ? $"usual {Number(low)}" : $"usual {Number(low)}–{Number(high)}", false));
        }

        double last = double.MinValue;
        foreach ((double y, string text, bool bold) in names.OrderBy(n => n.Y))
        {
            double at = Math.Max(y + (AxisText * 0.35), last + AxisText);
            canvas.Text(new(frame.Right + 4, at), text, new(AxisText, bold, bold ? Ink.Black : Ink.Grey));
            last = at;
        }
    }

    private static void Letters(ICanvas canvas, Chart chart, ChartFrame frame)
    {
        foreach (ChartPoint point in chart.Points.Where(p => p.Letters is not null))
        {
            Spot at = frame.Of(point);
            bool above = at.Y > frame.Top + 14;
            canvas.Text(new(at.X, above ? at.Y - 5 : at.Y + 12), point.Letters!, new(8, Bold: true, Anchor: Anchor.Middle));
        }
    }

    // 1, 2 or 5 times a power of ten, the next one up.
    private static double Step(double wanted)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(wanted)));
        return power * new[] { 1.0, 2, 5, 10 }.First(step => step * power >= wanted * 0.999);
    }
}
