using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Reports;

/// <summary>A report with all that happened to it.</summary>
/// <param name="Opened">How it began.</param>
public sealed record Report(ReportOpened Opened)
{
    /// <summary>The report's id.</summary>
    public string Id => Opened.Id;

    /// <summary>The resident's id.</summary>
    public string Resident => Opened.Resident;

    /// <summary>When it was opened.</summary>
    public DateTimeOffset At => Opened.At;

    /// <summary>Now, or this shift.</summary>
    public ReportUrgency Urgency => Opened.Urgency;

    /// <summary>Which vital sign; null where it is no reading's.</summary>
    public VitalSign? Sign => Opened.Sign;

    /// <summary>The ids of the readings it rests on, oldest first.</summary>
    public IReadOnlyList<string> Readings => Opened.Readings;

    /// <summary>What is reported, in words.</summary>
    public string Situation => Opened.Situation;

    /// <summary>Who was told, oldest first.</summary>
    public IReadOnlyList<ReportTold> Told { get; init; } = [];

    /// <summary>The nurse's acknowledgement, or null.</summary>
    public ReportAcknowledged? Acknowledged { get; init; }

    /// <summary>How it ended, or null.</summary>
    public ReportClosed? Closed { get; init; }

    /// <summary>What must be known of it besides: a reading that it rests on was amended.</summary>
    public IReadOnlyList<ReportNoted> Notes { get; init; } = [];

    /// <summary>Plans that follow it, oldest first.</summary>
    public IReadOnlyList<PlanMade> Plans { get; init; } = [];

    /// <summary>How far it has come.</summary>
    public ReportState State => this switch
    {
        { Closed: not null } => ReportState.Closed,
        { Acknowledged: not null } => ReportState.Acknowledged,
        { NurseTold: not null } => ReportState.Told,
        _ => ReportState.Open,
    };

    /// <summary>No nurse has acknowledged it: it is the first thing at the next handover.</summary>
    public bool IsOpen => State is ReportState.Open or ReportState.Told;

    /// <summary>When the nurse was told first, or null.</summary>
    public ReportTold? NurseTold => Told.FirstOrDefault(t => t.Whom == Reports.Told.Nurse);

    /// <summary>Whether it waits for a nurse longer than the home wants. That she was told does not change it.</summary>
    public bool IsOverdue(Overdue limits, DateTimeOffset now) => IsOpen && now - At > limits.Of(Urgency);
}
