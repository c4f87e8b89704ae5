using System.CommandLine;
using HandsFree.App.Homes;
using HandsFree.App.Journals;
using HandsFree.App.Unlocking;
using HandsFree.Core.Journal;
using HandsFree.Store.Journaling;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>"handsfree journal accept": a supervisor takes a journal as it lies there.</summary>
internal static class JournalAcceptCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        Option<string> because = new("--because") { Description = "Why; it stands in the record", HelpName = "TEXT", Required = true };
        Command command = new(
            "accept",
            "Takes the journal as it lies there, where this device has seen it further on or elsewhere; for a supervisor, after she has looked for the right one")
        {
            because,
        };
        return host.Runs(command, (parsed, services) =>
        {
            HomeFolder folder = services.GetRequiredService<HomeFolder>();
            string why = parsed.GetValue(because)!.Trim();
            if (why.Length == 0)
            {
                return host.Refuse("--because is empty; write why, it stands in the record");
            }

            if (!File.Exists(folder.JournalFile))
            {
                return host.Refuse($"{folder.JournalFile}: there is no file; put it back, or bring a backup in with \"handsfree journal restore\"");
            }

            (HomeJournal? opened, string? error) = HomeJournal.Open(folder, services.GetRequiredService<Unlocker>(), accepts: true);
            using HomeJournal? journal = opened;
            if (journal is null)
            {
                return host.Refuse(error!);
            }

            try
            {
                long events = journal.Events.Count;
                journal.Desk.Write((id, at) => new JournalAccepted(id, journal.Holder?.Person ?? "device", at, events, why));
                host.Surroundings.Out.WriteLine($"{folder.JournalFile}: taken as it is, {events} events.");
                return ExitCodes.Done;
            }
            catch (JournalWriteException failure)
            {
                return host.Refuse(failure.Message);
            }
        });
    }
}
