namespace HandsFree.App.Homes;

/// <summary>After what time something that waits is overdue. The defaults are a proposal: common practice, no source.</summary>
/// <param name="ReportNow">A report that can't wait and that no nurse acknowledged.</param>
/// <param name="ReportThisShift">A report for this shift that no nurse acknowledged.</param>
/// <param name="Recheck">A recheck that was asked for and not done.</param>
internal sealed record Overdue(TimeSpan ReportNow, TimeSpan ReportThisShift, TimeSpan Recheck);
