using System.CommandLine;
using HandsFree.App.Homes;
using HandsFree.App.Journals;
using HandsFree.Core.Journal;
using HandsFree.Store.Journaling;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>"handsfree journal list": every event, oldest first.</summary>
internal static class JournalListCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        Option<bool> json = new("--json") { Description = "One JSON object a line for each event, with its number" };
        Command command = new("list", "Lists every event of the journal, oldest first") { json };
        return host.Runs(command, (parsed, services) =>
        {
            HomeOpening opening = services.GetRequiredService<HomeOpening>();
            if (!opening.TryGet(out Home? home))
            {
                return host.RefuseHome(opening);
            }

            return JournalFile.Reading(services, host, journal =>
            {
                journal.Desk.Viewed("journal list");
                foreach (JournalEntry entry in journal.Entries)
                {
                    (long number, JournalEvent? happened, string why) = PassedOver.Try(entry);
                    host.Surroundings.Out.WriteLine(
                        parsed.GetValue(json) ? JournalLine.Json(entry)
                        : happened is null ? PassedOver.Line(why)
                        : JournalLine.Text(number, happened, home));
                }

                return ExitCodes.Done;
            });
        });
    }
}
