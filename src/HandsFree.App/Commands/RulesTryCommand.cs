using System.CommandLine;
using HandsFree.App.Hear;
using HandsFree.App.Homes;
using HandsFree.App.Unlocking;
using HandsFree.App.RuleDesk;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Observations;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>"handsfree rules try": what would be decided, without keeping anything.</summary>
internal static class RulesTryCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        Argument<string> text = new("READING") { Description = "A reading as it is spoken or in figures: \"pulse 132\", \"blood pressure 118/76\"" };
        Option<string?> resident = new("--resident") { Description = "For a resident of the roster: limits, usual values, earlier readings", HelpName = "ID" };
        Option<int> rechecks = new("--rechecks") { Description = "How many rechecks were done already, 0 to 2", HelpName = "N" };
        Ranges.Within(rechecks, 0, 2);
        Option<bool> json = new("--json") { Description = "One JSON object" };
        Command command = new("try", "Says what would be decided of a reading; nothing is kept") { text, resident, rechecks, json };
        return host.Runs(command, (parsed, services) =>
        {
            HomeOpening opening = services.GetRequiredService<HomeOpening>();
            if (!opening.TryGet(out Home? home))
            {
                return host.RefuseHome(opening);
            }

            (Reading? reading, string? wrong) = TypedReading.Of(parsed.GetValue(text)!, home, services.GetRequiredService<GrammarShelf>());
            if (reading is null)
            {
                return host.Refuse(wrong!);
            }

            DateTimeOffset now = home.Settings.Here(host.Surroundings.Time.GetUtcNow());
            (DecisionContext? context, string? error) = Context(
                parsed.GetValue(resident), parsed.GetValue(rechecks), home, services.GetRequiredService<Unlocker>(), now);
            if (context is null)
            {
                return host.Refuse(error!);
            }

            Decision decision = home.Rules.Decide(reading, context);
            string read = ReadBackTexts.Of(reading);
            host.Surroundings.Out.WriteLine(parsed.GetValue(json) ? RuleWriter.Json(read, decision) : RuleWriter.Text(read, decision));
            return ExitCodes.Done;
        });
    }

    private static (DecisionContext? Context, string? Error) Context(
        string? id, int rechecks, Home home, Unlocker unlocker, DateTimeOffset now)
    {
        HashSet<string> noSymptoms = [];
        if (id is null)
        {
            Resident nobody = new() { Id = "nobody", Name = "nobody", Room = 1, Born = DateOnly.MinValue };
            return (new DecisionContext(nobody, [], rechecks, now, noSymptoms), null);
        }

        if (home.Roster.ById(id) is not { } resident)
        {
            return (null, $"{home.Folder.RosterFile} has no resident with the id \"{id}\"; write one that it has");
        }

        (IReadOnlyList<JournalEvent>? journal, string? error) = JournalContent.Read(home.Folder, unlocker, "rules try");
        return journal is null
            ? (null, error)
            : (new DecisionContext(resident, PastReadings.Of(journal, id), rechecks, now, noSymptoms), null);
    }
}
