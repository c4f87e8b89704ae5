using System.CommandLine;
using HandsFree.App.Homes;
using HandsFree.App.Reports;
using HandsFree.App.ShiftChange;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>"handsfree report": what a nurse must be told, and what came of it.</summary>
internal static class ReportCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host) => new("report", "What a nurse must be told: lists, shows, prints reports; told, acknowledged, closed, planned, plan withdrawn")
    {
        List(host),
        Show(host),
        Print(host),
        Told(host),
        Acknowledge(host),
        Close(host),
        Plan(host),
        Withdraw(host),
    };

    private static Command List(CommandHost host)
    {
        Option<bool> all = new("--all") { Description = "Also those that were closed in the last two weeks" };
        Option<string?> unit = new("--unit") { Description = "Only of this unit, as roster.json names it", HelpName = "NAME" };
        Option<bool> json = Json("One JSON object a line");
        return host.Runs(
            new Command("list", "Lists the reports that are not closed, the open ones first") { all, unit, json },
            (parsed, services) => ReportDesk.With(services, host, desk => desk.List(parsed.GetValue(all), parsed.GetValue(unit), parsed.GetValue(json))));
    }

    private static Command Show(CommandHost host)
    {
        Argument<string> report = Report();
        Option<bool> json = Json("One JSON object");
        return host.Runs(
            new Command("show", "Shows one report: situation and background from the record; assessment and recommendation are the nurse's") { report, json },
            (parsed, services) => ReportDesk.With(services, host, desk => desk.Show(parsed.GetValue(report)!, parsed.GetValue(json))));
    }

    private static Command Print(CommandHost host)
    {
        Argument<string> report = Report();
        Option<bool> html = new("--html") { Description = "A page of HTML that prints on A4 and Letter; else plain text" };
        Option<string?> file = new("--out") { Description = "The file to write (default: stdout); must not be there yet", HelpName = "FILE" };
        return host.Runs(
            new Command("print", "Writes one report for paper") { report, html, file },
            (parsed, services) => ReportDesk.With(
                services, host, desk => desk.Print(parsed.GetValue(report)!, parsed.GetValue(html), parsed.GetValue(file))));
    }

    private static Command Told(CommandHost host)
    {
        Argument<string> report = Report();
        Option<string> to = new("--to") { Description = "Who was told (prescriber and family are entered by a nurse)", DefaultValueFactory = _ => "nurse" };
        Option<string?> who = new("--who") { Description = "Who that was: an id or a title", HelpName = "TEXT" };
        Option<string> how = new("--how") { Description = "How", DefaultValueFactory = _ => "in-person" };
        Option<string?> at = new("--at") { Description = "When: 07:30, or 2026-01-31T07:30 (default: now)", HelpName = "TIME" };
        Option<string?> unit = Unit();
        to.AcceptOnlyFromAmong("nurse", "prescriber", "family");
        how.AcceptOnlyFromAmong("in-person", "by-phone", "in-writing");
        return host.Runs(new Command("told", "Somebody was told of a report; after the nurse was told, the aide is left alone") { report, to, who, how, at, unit }, (parsed, services) =>
        {
            (DateTimeOffset? when, string? wrong) = Past(parsed.GetValue(at), services, host);
            return wrong is not null
                ? host.Refuse(wrong)
                : ReportDesk.With(services, host, desk => desk.Told(
                    parsed.GetValue(report)!,
                    parsed.GetValue(to) switch { "prescriber" => Core.Reports.Told.Prescriber, "family" => Core.Reports.Told.Family, _ => Core.Reports.Told.Nurse },
                    parsed.GetValue(who)?.Trim() is { Length: > 0 } named ? named : null,
                    parsed.GetValue(how) switch { "by-phone" => ToldHow.ByPhone, "in-writing" => ToldHow.InWriting, _ => ToldHow.InPerson },
                    when,
                    parsed.GetValue(unit)));
        });
    }

    private static Command Acknowledge(CommandHost host)
    {
        Argument<string> report = Report();
        Option<string?> advised = new("--advised") { Description = "What was advised; it is shown to be read back before it is written", HelpName = "TEXT" };
        Option<bool> readBack = new("--read-back") { Description = "It was read back already: don't ask" };
        Option<string?> unit = Unit();
        return host.Runs(
            new Command("acknowledge", "A nurse knows of a report and has it in hand") { report, advised, readBack, unit },
            (parsed, services) => ReportDesk.With(services, host, desk => desk.Acknowledge(
                parsed.GetValue(report)!,
                parsed.GetValue(advised)?.Trim() is { Length: > 0 } text ? text : null,
                parsed.GetValue(readBack),
                parsed.GetValue(unit))));
    }

    private static Command Close(CommandHost host)
    {
        Argument<string> report = Report();
        Option<string> outcome = new("--outcome") { Description = "What came of it; it stands in the record", HelpName = "TEXT", Required = true };
        Option<string?> unit = Unit();
        return host.Runs(
            new Command("close", "Nothing more is to be done about a report") { report, outcome, unit },
            (parsed, services) => ReportDesk.With(
                services, host, desk => desk.Close(parsed.GetValue(report)!, parsed.GetValue(outcome)!.Trim(), parsed.GetValue(unit))));
    }

    private static Command Plan(CommandHost host)
    {
        Argument<string> report = Report();
        Option<string> value = new("--value") { Description = "What is limited", Required = true };
        Option<decimal?> least = new("--least") { Description = "Values below are reported", HelpName = "NUMBER" };
        Option<decimal?> greatest = new("--greatest") { Description = "Values above are reported", HelpName = "NUMBER" };
        Option<string> until = new("--until") { Description = "When it ends: 15:00 (the next time), or 2026-01-31T15:00", HelpName = "TIME", Required = true };
        Option<string?> text = new("--text") { Description = "What is to be done meanwhile", HelpName = "TEXT" };
        Option<string?> ordered = new("--ordered-by") { Description = "Who ordered it; needed where a limit lies beyond report-now", HelpName = "NAME" };
        Option<string?> unit = Unit();
        value.AcceptOnlyFromAmong([.. RosterWords.Values.Keys]);
        Command command = new("plan", "A nurse's plan after a report: a limit for a time; what is worse is reported all the same")
        {
            report, value, least, greatest, until, text, ordered, unit,
        };
        return host.Runs(command, (parsed, services) =>
        {
            (DateTimeOffset? end, string? wrong) = Future(parsed.GetValue(until)!, services, host);
            return end is not { } ends
                ? host.Refuse(wrong!)
                : ReportDesk.With(services, host, desk => desk.Plan(
                    parsed.GetValue(report)!,
                    new PlanAsked(
                        RosterWords.Values[parsed.GetValue(value)!], parsed.GetValue(least), parsed.GetValue(greatest), ends, parsed.GetValue(text)?.Trim() ?? "")
                    {
                        OrderedBy = parsed.GetValue(ordered)?.Trim() is { Length: > 0 } name ? name : null,
                    },
                    parsed.GetValue(unit)));
        });
    }

    private static Command Withdraw(CommandHost host)
    {
        Argument<string> report = Report();
        Option<string?> value = new("--value") { Description = "Only the plan for this (default: all plans of the report)" };
        Option<string> why = new("--why") { Description = "Why it ends; it stands in the record", HelpName = "TEXT", Required = true };
        Option<string?> unit = Unit();
        value.AcceptOnlyFromAmong([.. RosterWords.Values.Keys]);
        return host.Runs(
            new Command("withdraw", "Ends the plans of a report before their time") { report, value, why, unit },
            (parsed, services) => ReportDesk.With(services, host, desk => desk.Withdraw(
                parsed.GetValue(report)!,
                parsed.GetValue(value) is { } named ? RosterWords.Values[named] : null,
                parsed.GetValue(why)!.Trim(),
                parsed.GetValue(unit))));
    }

    private static (DateTimeOffset? At, string? Wrong) Past(string? typed, IServiceProvider services, CommandHost host) =>
        typed is null ? (null, null)
        : Moment(typed, services, host) is { } at ? (at, null)
        : (null, $"--at is \"{typed}\"; write a time that is over, such as 07:30 or 2026-01-31T07:30");

    // A time of day is the next one.
    private static (DateTimeOffset? At, string? Wrong) Future(string typed, IServiceProvider services, CommandHost host) =>
        Moment(typed, services, host) is not { } at ? (null, $"--until is \"{typed}\"; write a time such as 15:00 or 2026-01-31T15:00")
        : (typed.Contains('-', StringComparison.Ordinal) ? at : at.AddDays(1), null);

    private static DateTimeOffset? Moment(string typed, IServiceProvider services, CommandHost host)
    {
        HomeSettings settings = services.GetRequiredService<HomeOpening>().Home?.Settings ?? new HomeSettings { TimeZone = host.Surroundings.Time.LocalTimeZone };
        return ShiftBeginning.Typed(typed.Trim(), settings, host.Surroundings.Time.GetUtcNow())?.At;
    }

    private static Argument<string> Report() => new("REPORT") { Description = "The report's id, as \"report list\" shows it, or the room whose only open one it is: 12, 12b" };

    private static Option<string?> Unit() => new("--unit") { Description = "The unit at work; a report of another one is refused", HelpName = "NAME" };

    private static Option<bool> Json(string description) => new("--json") { Description = description };
}
