using System.Text;
using HandsFree.App.Commands;
using HandsFree.App.Composition;
using HandsFree.App.Files;
using HandsFree.App.Homes;
using HandsFree.App.Journals;
using HandsFree.Core.Files;
using HandsFree.Core.Journal;
using HandsFree.Core.People;
using HandsFree.Core.Reports;
using HandsFree.Core.Reports.Sheets;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Reports;

/// <summary>What "handsfree report" does: looks at reports, and writes what happens to them beside a running round.</summary>
internal sealed class ReportDesk
{
    /// <summary>A plan stands at most this long; what stands longer is an order and belongs to the roster (a proposal: common practice, no source).</summary>
    public static readonly TimeSpan LongestPlan = TimeSpan.FromDays(14);

    private readonly HomeJournal journal;
    private readonly Home home;
    private readonly CommandHost host;
    private readonly ReportFinder finder;
    private readonly DateTimeOffset now;

    private ReportDesk(HomeJournal journal, Home home, CommandHost host)
    {
        (this.journal, this.home, this.host) = (journal, home, host);
        finder = new ReportFinder(journal, home);
        now = home.Settings.Here(host.Surroundings.Time.GetUtcNow());
    }

    private string Person => journal.Holder?.Person ?? home.Settings.Aide;

    private Role? Role => journal.Holder?.Role;

    private TextWriter Output => host.Surroundings.Out;

    /// <summary>Does the work on the home's journal.</summary>
    public static int With(IServiceProvider services, CommandHost host, Func<ReportDesk, int> work)
    {
        HomeOpening opening = services.GetRequiredService<HomeOpening>();
        return !opening.TryGet(out Home? home)
            ? host.RefuseHome(opening)
            : JournalFile.Reading(services, host, journal => work(new ReportDesk(journal, home, host)));
    }

    /// <summary>Lists reports, the open ones first, the gravest and oldest of them in front; then the values that must be told and wait for
    /// their recheck.</summary>
    /// <param name="all">Also those that are closed, of the last two weeks.</param>
    /// <param name="unit">Only of this unit, or null.</param>
    /// <param name="json">One JSON object a line.</param>
    public int List(bool all, string? unit, bool json)
    {
        if (unit is not null && !home.Roster.Units.Contains(unit, StringComparer.OrdinalIgnoreCase))
        {
            return host.Refuse(NoUnit(unit));
        }

        journal.Desk.Viewed("report list");
        Report[] listed =
        [
            .. finder.Book.All.Where(r => (all || r.State != ReportState.Closed) && (unit is null || IsOf(r.Resident, unit)))
                .OrderBy(r => r.State == ReportState.Told ? ReportState.Open : r.State).ThenByDescending(r => r.Urgency).ThenBy(r => r.At),
        ];
        ReportLines lines = new(home, finder.Events, now);
        foreach (Report report in listed)
        {
            Output.WriteLine(json ? lines.Json(report) : lines.Text(report));
        }

        // A value that must reach the nurse and waits for its recheck: it becomes a report where nobody measures again.
        RecheckChain[] waiting =
        [
            .. RecheckChains.Waiting(finder.Events).Where(c => c.Urgency is not null && (unit is null || IsOf(c.Resident, unit))),
        ];
        foreach (RecheckChain chain in waiting)
        {
            Output.WriteLine(json ? lines.Json(chain) : lines.Text(chain));
        }

        if (listed.Length + waiting.Length == 0 && !json)
        {
            Output.WriteLine(all ? "No reports." : "No open reports.");
        }

        return ExitCodes.Done;
    }

    /// <summary>Shows one report with all that the record knows of it.</summary>
    public int Show(string named, bool json) => On(named, null, report =>
    {
        journal.Desk.Viewed($"report show {report.Id}");
        SheetWriter writer = new(home, now);
        Output.WriteLine(json ? writer.Json(Sheet(report)) : writer.Text(Sheet(report)));
        return ExitCodes.Done;
    });

    /// <summary>Writes one report for paper.</summary>
    /// <param name="named">Which.</param>
    /// <param name="html">A page of HTML; else plain text.</param>
    /// <param name="file">Where to, or null for stdout.</param>
    public int Print(string named, bool html, string? file) => On(named, null, report =>
    {
        SheetWriter writer = new(home, now);
        if (file is not null && Path.Exists(file))
        {
            return host.Refuse($"{file} is there already; name another file with --out");
        }

        journal.Desk.Viewed($"report print {report.Id}");
        string page = html ? SheetPage.Of(Sheet(report), home, now) : writer.Text(Sheet(report)) + Environment.NewLine;
        if (file is null)
        {
            Output.Write(page);
            return ExitCodes.Done;
        }

        if (AtomicFile.Write(file, Encoding.UTF8.GetBytes(PlainText.ShownLines(page)), overwrite: false) is { } unwritten)
        {
            return host.Refuse(unwritten);
        }

        Output.WriteLine(file);
        return ExitCodes.Done;
    });

    /// <summary>Somebody was told.</summary>
    public int Told(string named, Told whom, string? who, ToldHow how, DateTimeOffset? at, string? unit) => On(named, unit, report =>
        ReportMoves.WhyNotTold(report, whom, Role) is { } why ? Refuse(report, why)
        : at < report.At || at > now ? host.Refuse($"--at is before the report was opened, or to come; write a time between {report.At:yyyy-MM-dd'T'HH:mm} and now")
        : Write(
            (id, person) => new ReportTold(id, person, now, report.Id, whom, who, how, at ?? now), $"{ReportMoves.Name(whom)} told"));

    /// <summary>A nurse knows of it. What she advises is read back to her before it is written.</summary>
    public int Acknowledge(string named, string? advised, bool wasReadBack, string? unit) => On(named, unit, report =>
    {
        if (ReportMoves.WhyNotAcknowledged(report, Role) is { } why)
        {
            return Refuse(report, why);
        }

        if (advised is not null)
        {
            Output.WriteLine($"Advised: {advised}");
            if (!wasReadBack && !IsYes("Read it back to her, then type yes: "))
            {
                return host.Refuse("not read back; nothing was written");
            }
        }

        return Write((id, person) => new ReportAcknowledged(id, person, now, report.Id) { Advised = advised }, "acknowledged");
    });

    /// <summary>Nothing more is to be done.</summary>
    public int Close(string named, string outcome, string? unit) => On(named, unit, report =>
        ReportMoves.WhyNotClosed(report, Role) is { } why ? Refuse(report, why)
        : outcome.Length == 0 ? host.Refuse("--outcome is empty; write what came of it, it stands in the record")
        : Write((id, person) => new ReportClosed(id, person, now, report.Id, outcome), "closed"));

    /// <summary>A plan: a limit for a time.</summary>
    public int Plan(string named, PlanAsked asked, string? unit) => On(named, unit, report =>
    {
        string? why = ReportMoves.WhyNotPlanned(report, Role)
            ?? (home.Roster.ById(report.Resident) is null ? "its resident is no longer on the roster" : null);
        if (why is not null)
        {
            return Refuse(report, why);
        }

        if (report.Sign is { } sign && !WrittenReading.ValuesOf(sign).Contains(asked.Value))
        {
            return host.Refuse($"the report is on {EnumWords.Of(sign)}; a plan for {PlanTexts.Name(asked.Value)} follows a report on that");
        }

        (decimal? least, decimal? greatest, string? wrong) = asked.Kept(home.Settings.RosterUnits);
        if (wrong is not null)
        {
            return host.Refuse(wrong);
        }

        DecisionContext context = new(home.Roster.ById(report.Resident)!, [], 0, now, new HashSet<string>());
        PlanBounds bounds = new(home.Rules, home.Settings.RosterUnits, context);
        if ((bounds.WhyNot("--least", asked.Value, least) ?? bounds.WhyNot("--greatest", asked.Value, greatest)) is { } past)
        {
            return host.Refuse(past);
        }

        string? orderedBy = asked.OrderedBy;
        if (orderedBy is null && bounds.Question(asked.Value, least, greatest) is { } question)
        {
            orderedBy = Named(question);
            if (orderedBy is null)
            {
                return host.Refuse($"{question} Nothing was planned; give the name with --ordered-by");
            }
        }

        return asked.Until <= now || asked.Until > now + LongestPlan
            ? host.Refuse($"--until is not within the next {LongestPlan.TotalDays:0} days; what stands longer is an order and belongs to {home.Folder.RosterFile}")
            : Write(
                (id, person) => new PlanMade(id, person, now, report.Resident, report.Id, asked.Value, least, greatest, home.Settings.Here(asked.Until), asked.Text) { OrderedBy = orderedBy },
                "planned");
    });

    /// <summary>Ends the plans of a report before their time.</summary>
    /// <param name="named">The report.</param>
    /// <param name="value">Only the plan for this; null for all.</param>
    /// <param name="why">Why; it stands in the record.</param>
    /// <param name="unit">The unit at work, or null.</param>
    public int Withdraw(string named, LimitedValue? value, string why, string? unit) => On(named, unit, report =>
    {
        if (ReportMoves.WhyNotWithdrawn(Role) is { } whyNot)
        {
            return Refuse(report, whyNot);
        }

        PlanMade[] standing = [.. report.Plans.Where(p => now < p.Until && (value is null || p.Value == value))];
        if (standing.Length == 0 || why.Length == 0)
        {
            return why.Length == 0 ? host.Refuse("--why is empty; write why the plan ends, it stands in the record") : Refuse(report, "no plan of it stands");
        }

        foreach (PlanMade plan in standing)
        {
            Write((id, person) => new PlanWithdrawn(id, person, now, report.Resident, report.Id, plan.Id, why), $"plan {PlanTexts.InFigures(plan)} withdrawn");
        }

        return ExitCodes.Done;
    });

    private string? Named(string question)
    {
        if (!host.Surroundings.IsInteractive)
        {
            return null;
        }

        Output.Write($"{question} ");
        return host.Surroundings.In.ReadLine()?.Trim() is { Length: > 0 } name ? name : null;
    }

    private int On(string named, string? unit, Func<Report, int> work)
    {
        if (unit is not null && !home.Roster.Units.Contains(unit, StringComparer.OrdinalIgnoreCase))
        {
            return host.Refuse(NoUnit(unit));
        }

        (Report? report, string? wrong) = finder.Find(named);
        return report is null ? host.Refuse(wrong!)
            : unit is not null && !IsOf(report.Resident, unit) ? Refuse(report, $"it is of {UnitOf(report)}, not of {unit}")
            : work(report);
    }

    private int Write(Func<string, string, JournalEvent> make, string done)
    {
        long number = journal.Desk.Write((id, _) => make(id, Person));
        Output.WriteLine($"{Capital(done)}, saved as event {number}.");
        return ExitCodes.Done;
    }

    private bool IsYes(string question)
    {
        Output.Write(question);
        return host.Surroundings.In.ReadLine()?.Trim() == "yes";
    }

    private ReportSheet Sheet(Report report) => new ReportSheets(finder.Events, home.Roster, home.Settings.Clock, home.Settings.Overdue).Of(report, now);

    private int Refuse(Report report, string why) => host.Refuse($"report {report.Id}: {why}");

    private bool IsOf(string resident, string unit) => string.Equals(home.Roster.ById(resident)?.Unit, unit, StringComparison.OrdinalIgnoreCase);

    private string UnitOf(Report report) => home.Roster.ById(report.Resident) switch
    {
        null => "a resident who is no longer on the roster",
        { Unit: { } unit } => unit,
        Resident => "no unit",
    };

    private string NoUnit(string unit) => $"there is no unit \"{unit}\"; {(home.Roster.Units is { Count: > 0 } units ? $"the units are {string.Join(", ", units)}" : $"{home.Folder.RosterFile} names none")}";

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
