using System.Globalization;
using HandsFree.Core.People;

namespace HandsFree.Core.Reports;

/// <summary>What may happen to a report next. Each answers null where it may, else why not.</summary>
public static class ReportMoves
{
    /// <summary>Somebody was told.</summary>
    /// <param name="report">The report.</param>
    /// <param name="whom">Who was told.</param>
    /// <param name="role">The role of who enters it; null where nobody is set up.</param>
    public static string? WhyNotTold(Report report, Told whom, Role? role) => report switch
    {
        { State: ReportState.Closed } => Closed(report),
        { State: ReportState.Acknowledged } when whom == Told.Nurse => Acknowledged(report),
        _ when whom != Told.Nurse && role is null or Role.Aide => $"that the {Name(whom)} was told is entered by a nurse",
        _ => null,
    };

    /// <summary>A nurse knows of it.</summary>
    /// <param name="report">The report.</param>
    /// <param name="role">Her role; null where nobody is set up.</param>
    public static string? WhyNotAcknowledged(Report report, Role? role) => report switch
    {
        { State: ReportState.Closed } => Closed(report),
        { State: ReportState.Acknowledged } => Acknowledged(report),
        _ => WhyNoNurse(role, "acknowledges a report"),
    };

    /// <summary>Nothing more is to be done.</summary>
    /// <inheritdoc cref="WhyNotAcknowledged"/>
    public static string? WhyNotClosed(Report report, Role? role) => report switch
    {
        { State: ReportState.Closed } => Closed(report),
        { State: ReportState.Acknowledged } => WhyNoNurse(role, "closes a report"),
        _ => NotYet,
    };

    /// <summary>A plan follows it.</summary>
    /// <inheritdoc cref="WhyNotAcknowledged"/>
    public static string? WhyNotPlanned(Report report, Role? role) => report switch
    {
        { State: ReportState.Closed } => Closed(report),
        { State: ReportState.Acknowledged } => WhyNoNurse(role, "makes a plan"),
        _ => NotYet,
    };

    /// <summary>A plan ends before its time; that needs no open report.</summary>
    /// <param name="role">Her role; null where nobody is set up.</param>
    public static string? WhyNotWithdrawn(Role? role) => WhyNoNurse(role, "withdraws a plan");

    /// <summary>Who is told, as a word.</summary>
    public static string Name(Told whom) => whom switch
    {
        Told.Nurse => "nurse",
        Told.Prescriber => "prescriber",
        Told.Family => "family",
        _ => throw new ArgumentOutOfRangeException(nameof(whom), whom, "nobody like that is told"),
    };

    private const string NotYet = "no nurse has acknowledged it yet; that comes first";

    private static string? WhyNoNurse(Role? role, string does) => role switch
    {
        null => $"a nurse {does}, and nobody is set up; a supervisor sets people up with \"handsfree people add\"",
        Role.Aide => $"a nurse {does}, an aide can't",
        _ => null,
    };

    private static string Closed(Report report) => $"it was closed by {report.Closed!.Person} on {Moment(report.Closed.At)}";

    private static string Acknowledged(Report report) =>
        $"it was acknowledged by {report.Acknowledged!.Person} on {Moment(report.Acknowledged.At)} already";

    private static string Moment(DateTimeOffset at) => at.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
}
