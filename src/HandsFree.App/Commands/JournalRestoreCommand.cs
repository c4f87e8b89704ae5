using System.CommandLine;
using HandsFree.App.Homes;
using HandsFree.App.People;
using HandsFree.App.Unlocking;
using HandsFree.Core.Journal;
using HandsFree.Core.People;
using HandsFree.Store.Journaling;
using HandsFree.Store.Keys;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>"handsfree journal restore": a backup in the place of a journal that is gone.</summary>
internal sealed class JournalRestoreCommand
{
    private readonly CommandHost host;
    private readonly Argument<string> file = new("FILE") { Description = "The backup" };
    private readonly Option<string?> supervisor = new("--supervisor")
    {
        Description = "On another device than the one that wrote it: the id of the supervisor who gets a new PIN; asks for the recovery key",
        HelpName = "PERSON",
    };

    private JournalRestoreCommand(CommandHost host) => this.host = host;

    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        JournalRestoreCommand restore = new(host);
        return host.Runs(
            new Command("restore", "Puts a backup where no journal is; overwrites nothing") { restore.file, restore.supervisor }, restore.Run);
    }

    private int Run(ParseResult parsed, IServiceProvider services)
    {
        HomeFolder folder = services.GetRequiredService<HomeFolder>();
        string? person = parsed.GetValue(supervisor);
        (RecoveryKey, Credential.Person)? taking = null;
        if (person is not null)
        {
            (RecoveryKey? key, string? noKey) = RecoveryText.Read(host.Surroundings);
            if (key is null)
            {
                return host.Refuse(noKey!);
            }

            (Pin? pin, string? noPin) = NewPin.Read(host.Surroundings);
            if (pin is null)
            {
                return host.Refuse(noPin!);
            }

            taking = (key, new Credential.Person(person, pin));
        }

        string backup = parsed.GetValue(file)!;
        if (!File.Exists(backup))
        {
            return host.Refuse($"{backup}: there is no such file; name the backup");
        }

        if (MakeFolder(folder) is { } wrong)
        {
            return host.Refuse(wrong);
        }

        (JournalVerdict? verdict, JournalError? error) = JournalBackup.Restore(backup, folder.JournalFile, folder.States, taking);
        int code = CopyReport.Write(host, verdict, error, backup, $"{folder.JournalFile}: restored, {verdict?.Events} events, verified");
        return code == ExitCodes.Done ? Note(folder, services.GetRequiredService<Unlocker>(), verdict!.Events, taking?.Item2) : code;
    }

    // The restoring stands in the journal itself, as soon as somebody can write there.
    private int Note(HomeFolder folder, Unlocker unlocker, long events, Credential.Person? supervisor)
    {
        (HomeJournal? opened, string? error) = HomeJournal.Open(folder, unlocker, supervisor);
        using HomeJournal? journal = opened;
        if (journal is null)
        {
            return host.Refuse($"restored, but not noted in the journal: {error}");
        }

        try
        {
            string person = journal.Holder?.Person ?? "device";
            journal.Desk.Write((id, at) => new JournalRestored(id, person, at, events, OtherDevice: supervisor is not null));
            if (supervisor is not null)
            {
                journal.Desk.Write((id, at) => new PersonAdded(id, person, at, person, null, Role.Supervisor));
            }

            return ExitCodes.Done;
        }
        catch (JournalWriteException failure)
        {
            return host.Refuse($"restored, but not noted in the journal: {failure.Message}");
        }
    }

    private static string? MakeFolder(HomeFolder folder)
    {
        try
        {
            HomeFolder.Make(folder.Path);
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return $"{folder.Path}: the home's folder can't be made ({e.Message.ReplaceLineEndings(" ")}); name another with --home";
        }
    }
}
