using HandsFree.Core.Journal;

namespace HandsFree.Core.Reports;

/// <summary>All reports with what happened to them, made by adding event after event.</summary>
public sealed class ReportBook
{
    private readonly Dictionary<string, Report> reports = new(StringComparer.Ordinal);
    private readonly List<string> order = [];

    /// <summary>All reports that stand, the oldest first.</summary>
    public IEnumerable<Report> All => order.Select(id => reports[id]);

    /// <summary>The reports of a journal.</summary>
    public static ReportBook Of(IEnumerable<JournalEvent> journal)
    {
        ReportBook book = new();
        foreach (JournalEvent happened in journal)
        {
            book.Add(happened);
        }

        return book;
    }

    /// <summary>The report of that id, or null.</summary>
    public Report? ById(string id) => reports.GetValueOrDefault(id);

    /// <summary>Takes the next event of the journal. What names a report that is not here changes nothing.</summary>
    public void Add(JournalEvent happened)
    {
        switch (happened)
        {
            case ReportOpened opened when reports.TryAdd(opened.Id, new Report(opened)):
                order.Add(opened.Id);
                break;
            case ReportTold told:
                Change(told.Report, report => report with { Told = [.. report.Told, told] });
                break;
            case ReportAcknowledged acknowledged:
                Change(acknowledged.Report, report => report with { Acknowledged = report.Acknowledged ?? acknowledged });
                break;
            case ReportClosed closed:
                Change(closed.Report, report => report with { Closed = report.Closed ?? closed });
                break;
            case ReportNoted noted:
                Change(noted.Report, report => report with { Notes = [.. report.Notes, noted] });
                break;
            case PlanMade plan:
                Change(plan.Report, report => report with { Plans = [.. report.Plans, plan] });
                break;
            case PlanWithdrawn withdrawn:
                TakeBack(withdrawn.Plan);
                break;
            case EnteredInError error when reports.Remove(error.Event):
                order.Remove(error.Event);
                break;
            case EnteredInError error:
                TakeBack(error.Event);
                break;
            default:
                break;
        }
    }

    private void Change(string id, Func<Report, Report> change)
    {
        if (reports.TryGetValue(id, out Report? report))
        {
            reports[id] = change(report);
        }
    }

    private void TakeBack(string happened)
    {
        if (reports.Values.FirstOrDefault(r => r.Told.Any(t => t.Id == happened) || r.Plans.Any(p => p.Id == happened)) is { } report)
        {
            reports[report.Id] = report with
            {
                Told = [.. report.Told.Where(t => t.Id != happened)],
                Plans = [.. report.Plans.Where(p => p.Id != happened)],
            };
        }
    }
}
