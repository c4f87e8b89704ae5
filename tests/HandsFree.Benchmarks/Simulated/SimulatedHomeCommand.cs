using System.CommandLine;
using System.Diagnostics;
using System.Globalization;
using HandsFree.App.Composition;
using HandsFree.App.Homes;
using HandsFree.App.Unlocking;
using HandsFree.Benchmarks.Journals;
using HandsFree.Core.Journal;
using HandsFree.Core.Rules;
using HandsFree.Simulation;

namespace HandsFree.Benchmarks.Simulated;

/// <summary>"simulated-home": an invented home with its record, to try everything at size.</summary>
internal static class SimulatedHomeCommand
{
    private const int Batch = 1000;
    private const string UntilForm = "yyyy-MM-dd'T'HH:mm";

    /// <summary>Makes the command.</summary>
    public static Command Make()
    {
        Argument<string> folder = new("FOLDER") { Description = "Gets home.json, roster.json and the journal; must not have them yet" };
        Option<int> residents = new("--residents") { Description = "How many, 1 to 240", DefaultValueFactory = _ => 120 };
        Option<int> days = new("--days") { Description = "How long the record is", DefaultValueFactory = _ => 365 };
        Option<int> seed = new("--seed") { Description = "Of all chance", DefaultValueFactory = _ => 1 };
        Option<string> until = new("--until")
        {
            Description = $"The last moment, the home's time ({SimulationPlan.ZoneName}), as 2026-11-26T10:40 (default: now)",
            HelpName = "TIME",
        };
        Command command = new(
            "simulated-home", "An invented home and its record of rounds, by the rules in force; handsfree --home FOLDER opens it")
        {
            folder, residents, days, seed, until,
        };
        command.SetAction(parsed => Failures.Told(Console.Error, () =>
        {
            SimulationPlan plan = new(Moment(parsed.GetValue(until)))
            {
                Residents = parsed.GetValue(residents),
                Days = parsed.GetValue(days),
                Seed = parsed.GetValue(seed),
            };
            return Write(parsed.GetValue(folder)!, plan, Console.Out);
        }));
        return command;
    }

    private static DateTimeOffset Moment(string? typed)
    {
        TimeZoneInfo zone = TimeZoneInfo.FindSystemTimeZoneById(SimulationPlan.ZoneName);
        if (typed is null)
        {
            return TimeZoneInfo.ConvertTime(TimeProvider.System.GetUtcNow(), zone);
        }

        return DateTime.TryParseExact(typed, UntilForm, CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime local)
            ? new DateTimeOffset(local, zone.GetUtcOffset(local))
            : throw new InvalidDataException($"--until is \"{typed}\"; write a time such as 2026-11-26T10:40");
    }

    private static int Write(string path, SimulationPlan plan, TextWriter output)
    {
        HomeFolder folder = new(path, new ProgramPaths(Surroundings.OfThisProcess()).States);
        if (new[] { folder.JournalFile, folder.RosterFile, folder.SettingsFile, folder.RulesFile }.FirstOrDefault(System.IO.Path.Exists) is { } taken)
        {
            throw new InvalidDataException($"{taken} is there already; name a new folder");
        }

        Rulebook rules = Rulebook.Load().Rulebook ?? throw new InvalidDataException("the program's own rules can't be read");
        SimulatedHome simulated = new(plan, rules);
        HomeFolder.Make(folder.Path);
        File.WriteAllText(folder.SettingsFile, $$"""{ "name": "{{SimulatedHome.Name}}", "timeZone": "{{SimulationPlan.ZoneName}}" }""");
        if (new RosterWriter(new HomeSettings { TimeZone = plan.Zone }).Write(folder.RosterFile, simulated.Roster) is { } unwritten)
        {
            throw new InvalidDataException(unwritten);
        }

        (HomeJournal? journal, string? error) = HomeJournal.Open(folder, new Unlocker(Nobody.Around, null));
        using HomeJournal open = journal ?? throw new InvalidDataException(error);
        long begun = Stopwatch.GetTimestamp();
        int events = 0;
        foreach (JournalEvent[] batch in simulated.Events().Chunk(Batch))
        {
            open.Events.AppendAll(batch);
            events += batch.Length;
        }

        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{SimulatedHome.Name}: {plan.Residents} residents, {plan.Days} days, {events} events, {Stopwatch.GetElapsedTime(begun).TotalSeconds:0} s; {folder.Path}"));
        return 0;
    }
}
