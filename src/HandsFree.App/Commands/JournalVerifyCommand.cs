using System.CommandLine;
using System.Text.Json;
using HandsFree.App.Homes;
using HandsFree.App.Journals;
using HandsFree.Core.Journal;
using HandsFree.Store.Journaling;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>"handsfree journal verify": whether every event is there and can be read.</summary>
internal static class JournalVerifyCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        Option<bool> json = new("--json") { Description = "One JSON object" };
        Command command = new("verify", "Checks that no event is missing, that each can be read, and that no id stands twice") { json };
        return host.Runs(command, (parsed, services) =>
        {
            HomeFolder folder = services.GetRequiredService<HomeFolder>();
            return JournalFile.Reading(folder, host, journal =>
            {
                long count = 0;
                SortedDictionary<string, int> kinds = new(StringComparer.Ordinal);
                HashSet<string> ids = new(StringComparer.Ordinal);
                foreach (JournalEntry entry in journal.Entries)
                {
                    JournalEvent happened = HomeJournal.Decoded(entry);
                    if (!ids.Add(happened.Id))
                    {
                        throw new InvalidDataException($"event {entry.Sequence}: its id {happened.Id} stands in an earlier event too");
                    }

                    count++;
                    string kind = JournalLine.Kind(entry);
                    kinds[kind] = kinds.GetValueOrDefault(kind) + 1;
                }

                host.Surroundings.Out.WriteLine(parsed.GetValue(json)
                    ? JsonSerializer.Serialize(new { file = folder.JournalFile, events = count, kinds })
                    : $"{folder.JournalFile}: {count} events, none missing, each readable"
                        + (kinds.Count > 0 ? $" ({string.Join(", ", kinds.Select(kind => $"{kind.Value} {kind.Key}"))})" : ""));
                return ExitCodes.Done;
            });
        });
    }
}
