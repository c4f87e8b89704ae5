using HandsFree.Pages.Drawing;

namespace HandsFree.Pages.Charts;

/// <summary>The rectangle of a chart: from times and numbers to places.</summary>
internal sealed class ChartFrame
{
    private const double Margin = 0.08;
    private readonly Chart chart;

    /// <summary>The numbers that it spans hold all that is drawn: limits, what is usual, every reading.</summary>
    public ChartFrame(Chart chart, double left, double top, double width, double height)
    {
        (this.chart, Left, Top, Width, Height) = (chart, left, top, width, height);
        double[] all =
        [
            .. new[] { chart.Low, chart.High, chart.UsualLow, chart.UsualHigh, chart.LowerHigh, chart.LowerLow }.OfType<double>(),
            .. chart.Points.Select(p => p.Value),
            .. chart.Points.Select(p => p.Lower).OfType<double>(),
        ];
        double least = all.DefaultIfEmpty(0).Min();
        double most = all.DefaultIfEmpty(1).Max();
        double room = Math.Max((most - least) * Margin, most == least ? 1 : 0);
        (Least, Most) = (least - room, most + room);
    }

    public double Left { get; }

    public double Top { get; }

    public double Width { get; }

    public double Height { get; }

    public double Right => Left + Width;

    public double Bottom => Top + Height;

    public double Least { get; }

    public double Most { get; }

    public double X(DateTimeOffset at) => Left + (Width * ((at - chart.From) / (chart.Until - chart.From)));

    public double Y(double number) => Bottom - (Height * (number - Least) / (Most - Least));

    public Spot Of(ChartPoint point) => new(X(point.At), Y(point.Value));
}
