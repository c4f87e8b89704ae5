using HandsFree.Core.Journal;
using HandsFree.Core.Reports;
using HandsFree.Exchange.Csv;
using HandsFree.Exchange.Readings;

namespace HandsFree.Exchange.Tables;

/// <summary>The reports of a record, one a line, with what became of them.</summary>
public static class ReportTable
{
    /// <summary>The columns.</summary>
    public static IReadOnlyList<string> Columns { get; } =
    [
        "report", "resident", "opened", "by", "urgency", "sign", "situation", "readings", "state", "nurse told", "told how", "others told", "acknowledged",
        "acknowledged by", "advised", "closed", "closed by", "outcome", "plans", "notes",
    ];

    /// <summary>Writes the table.</summary>
    /// <returns>How many lines it has below the header.</returns>
    public static int Write(Stream target, RecordPart part) =>
        CsvSheet.Write(target, Columns, ReportBook.Of(part.Events).All.Where(r => part.Has(r.Resident, r.At)).Select(r => Row(part, r)));

    private static IReadOnlyList<string?> Row(RecordPart part, Report report) =>
    [
        report.Id,
        report.Resident,
        part.Moment(report.At),
        report.Opened.Person,
        CellWords<ReportUrgency>.Of(report.Urgency),
        report.Sign is { } sign ? Core.Residents.RosterWords.Of(Core.Residents.RosterWords.Signs, sign) : null,
        report.Situation,
        string.Join("; ", report.Readings),
        CellWords<ReportState>.Of(report.State),
        report.NurseTold is { } told ? part.Moment(told.ToldAt) : null,
        report.NurseTold is { } how ? CellWords<ToldHow>.Of(how.How) : null,
        string.Join("; ", report.Told.Where(t => t.Whom != Told.Nurse).Select(t => Other(part, t))),
        report.Acknowledged is { } known ? part.Moment(known.At) : null,
        report.Acknowledged?.Person,
        report.Acknowledged?.Advised,
        report.Closed is { } closed ? part.Moment(closed.At) : null,
        report.Closed?.Person,
        report.Closed?.Outcome,
        string.Join("; ", report.Plans.Select(p => $"{PlanTexts.InFigures(p)} until {part.Moment(p.Until)}{(p.Text.Length > 0 ? $": {p.Text}" : "")}")),
        string.Join("; ", report.Notes.Select(n => n.Text)),
    ];

    private static string Other(RecordPart part, ReportTold told) =>
        $"{CellWords<Told>.Of(told.Whom)}{(told.Who is { } who ? $" ({who})" : "")} {CellWords<ToldHow>.Of(told.How)} {part.Moment(told.ToldAt)}";
}
