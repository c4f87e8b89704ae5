using System.CommandLine;
using HandsFree.App.Homes;
using HandsFree.App.Journals;
using HandsFree.App.Unlocking;
using HandsFree.Core.Journal;
using HandsFree.Core.People;
using HandsFree.Store.Journaling;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>"handsfree journal retire": this device gives up its part of the journal for ever.</summary>
internal static class JournalRetireCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        Option<string> because = new("--because") { Description = "Why; it stands in the record", HelpName = "TEXT", Required = true };
        Option<bool> yes = new("--yes") { Description = "Does not ask" };
        Command command = new(
            "retire",
            "Destroys this device's secret, so that nothing opens the journal or a copy of it here any more; make a backup first, which the recovery key opens elsewhere")
        {
            because, yes,
        };
        return host.Runs(command, (parsed, services) =>
        {
            HomeFolder folder = services.GetRequiredService<HomeFolder>();
            string why = parsed.GetValue(because)!.Trim();
            return why.Length == 0
                ? host.Refuse("--because is empty; write why, it stands in the record")
                : JournalFile.Reading(services, host, journal => Retire(host, folder, journal, why, parsed.GetValue(yes)));
        });
    }

    private static int Retire(CommandHost host, HomeFolder folder, HomeJournal journal, string why, bool yes)
    {
        if (journal.Holder is not { Role: Role.Supervisor } supervisor)
        {
            return host.Refuse("only a supervisor retires a device");
        }

        if (!journal.People.HasRecovery)
        {
            return host.Refuse("there is no recovery key, so nothing would ever open this record again; make one first (handsfree people recovery)");
        }

        if (!yes)
        {
            host.Surroundings.Out.Write("After this only the recovery key opens the record, and only from a backup. Type yes to go on: ");
            if (host.Surroundings.In.ReadLine()?.Trim() != "yes")
            {
                return host.Refuse("not confirmed; nothing was changed");
            }
        }

        journal.Desk.Write((id, at) => new DeviceRetired(id, supervisor.Person, at, why));
        string journalId = journal.Id;
        journal.Dispose();
        JournalRetirement.Retire(folder.JournalFile, folder.States, journalId);
        host.Surroundings.Out.WriteLine("Retired. This device can't open the record any more; the file, and every copy of it, opens with the recovery key alone.");
        return ExitCodes.Done;
    }
}
