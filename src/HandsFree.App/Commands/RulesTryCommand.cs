using System.CommandLine;
using HandsFree.App.Hear;
using HandsFree.App.Homes;
using HandsFree.App.RuleDesk;
using HandsFree.App.Unlocking;
using HandsFree.Core.Journal;
using HandsFree.Core.Observations;
using HandsFree.Core.Rules;
using HandsFree.Core.Rules.Scores;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>"handsfree rules try": what would be decided, step by step, without keeping anything.</summary>
internal static class RulesTryCommand
{
    private const string Alert = "alert";

    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        Argument<string> text = new("READINGS")
        {
            Description = "A reading as it is spoken or in figures, \"pulse 132\"; several that were taken together, and symptoms, parted by commas: \"pulse 118, respirations 24, short of breath\"",
        };
        Option<string?> resident = new("--resident") { Description = "For a resident of the roster: limits, usual values, earlier readings", HelpName = "ID" };
        Option<int> rechecks = new("--rechecks") { Description = "How many rechecks were done already, 0 to 2", HelpName = "N" };
        Ranges.Within(rechecks, 0, 2);
        Option<string?> consciousness = new("--consciousness") { Description = "For NEWS2, where the home shows it: how the resident is" };
        consciousness.AcceptOnlyFromAmong(Alert, "confused", "voice", "pain", "unresponsive");
        Option<bool> json = new("--json") { Description = "One JSON object" };
        Command command = new("try", "Says what would be decided of readings, and why; nothing is kept") { text, resident, rechecks, consciousness, json };
        return host.Runs(command, (parsed, services) =>
        {
            HomeOpening opening = services.GetRequiredService<HomeOpening>();
            if (!opening.TryGet(out Home? home))
            {
                return host.RefuseHome(opening);
            }

            (TypedSet? typed, string? error) = TypedSet.Read(parsed.GetValue(text)!, home, services.GetRequiredService<GrammarShelf>());
            if (typed is null)
            {
                return host.Refuse(error!);
            }

            DateTimeOffset now = home.Settings.Here(host.Surroundings.Time.GetUtcNow());
            (DecisionContext? context, error) = Context(parsed.GetValue(resident), parsed.GetValue(rechecks), home, services.GetRequiredService<Unlocker>(), now, typed.Symptoms);
            if (context is null)
            {
                return host.Refuse(error!);
            }

            bool? alert = parsed.GetValue(consciousness) is { } said ? said == Alert : null;
            TriedReading[] readings = [.. typed.Readings.Zip(home.Rules.Decide(typed.Readings, context), (reading, decision) => new TriedReading(reading, decision))];
            Reading[] kept = [.. readings.Where(r => r.Decision.Outcome != Outcome.AskAgain).Select(r => r.Reading)];
            TriedSet tried = new(
                readings,
                home.Settings.News2 ? News2Set.Parameters(kept, context.Resident, alert, DateOnly.FromDateTime(now.DateTime)) : null);
            IEnumerable<string> lines = parsed.GetValue(json) ? [TriedSetJson.Of(tried)] : new TriedSetText(home.Rules.Describe()).Of(tried);
            foreach (string line in lines)
            {
                host.Surroundings.Out.WriteLine(line);
            }

            return ExitCodes.Done;
        });
    }

    private static (DecisionContext? Context, string? Error) Context(
        string? id, int rechecks, Home home, Unlocker unlocker, DateTimeOffset now, IReadOnlySet<string> symptoms)
    {
        if (id is null)
        {
            return (DecisionContexts.New([], Nobody.Resident, now, rechecks, symptoms), null);
        }

        if (home.Roster.ById(id) is not { } resident)
        {
            return (null, $"{home.Folder.RosterFile} has no resident with the id \"{id}\"; write one that it has");
        }

        (IReadOnlyList<JournalEvent>? journal, string? error) = JournalContent.Read(home.Folder, unlocker, "rules try");
        return journal is null
            ? (null, error)
            : (DecisionContexts.New(journal, resident, now, rechecks, symptoms), null);
    }
}
