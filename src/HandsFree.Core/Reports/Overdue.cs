namespace HandsFree.Core.Reports;

/// <summary>After what time something that waits is overdue.</summary>
/// <param name="ReportNow">A report that can't wait and that no nurse acknowledged.</param>
/// <param name="ReportThisShift">A report for this shift that no nurse acknowledged.</param>
/// <param name="Recheck">A recheck that was asked for and not done.</param>
public sealed record Overdue(TimeSpan ReportNow, TimeSpan ReportThisShift, TimeSpan Recheck)
{
    /// <summary>Where the home says nothing: 15 minutes, 4 hours, 30 minutes. A proposal: common practice, no source.</summary>
    public static Overdue Default { get; } = new(TimeSpan.FromMinutes(15), TimeSpan.FromHours(4), TimeSpan.FromMinutes(30));

    /// <summary>How long a report of that urgency may wait.</summary>
    public TimeSpan Of(ReportUrgency urgency) => urgency == ReportUrgency.Now ? ReportNow : ReportThisShift;
}
