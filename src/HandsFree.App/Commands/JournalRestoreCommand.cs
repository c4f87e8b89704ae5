using System.CommandLine;
using HandsFree.App.Homes;
using HandsFree.App.Journals;
using HandsFree.App.People;
using HandsFree.App.Unlocking;
using HandsFree.Core.Journal;
using HandsFree.Core.People;
using HandsFree.Store.Journaling;
using HandsFree.Store.Keys;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>"handsfree journal restore": a backup in the place of a journal that is gone, or in another folder to try it out.</summary>
internal sealed class JournalRestoreCommand
{
    private readonly CommandHost host;
    private readonly Argument<string> file = new("FILE") { Description = "The backup" };
    private readonly Option<bool> recovery = new("--recovery") { Description = "With the recovery key instead of a supervisor's passphrase" };
    private readonly Option<string?> supervisor = new("--supervisor")
    {
        Description = "On another device than the one that wrote it: the id of the supervisor who gets a new passphrase; asks for the recovery key",
        HelpName = "PERSON",
    };

    private JournalRestoreCommand(CommandHost host) => this.host = host;

    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        JournalRestoreCommand restore = new(host);
        return host.Runs(
            new Command(
                "restore",
                "Puts a backup where no journal is, for a supervisor; overwrites nothing, and with --home in another folder leaves the home in use as it is")
            {
                restore.file, restore.supervisor, restore.recovery,
            },
            restore.Run);
    }

    private int Run(ParseResult parsed, IServiceProvider services)
    {
        HomeFolder folder = services.GetRequiredService<HomeFolder>();
        string backup = parsed.GetValue(file)!;
        if (!File.Exists(backup))
        {
            return host.Refuse($"{backup}: there is no such file; name the backup");
        }

        if (MakeFolder(folder) is { } wrong)
        {
            return host.Refuse(wrong);
        }

        string? person = parsed.GetValue(supervisor);
        (Credential? paper, string? error) = person is not null || parsed.GetValue(recovery) ? Paper() : (null, null);
        if (error is not null)
        {
            return host.Refuse(error);
        }

        Credential.Person? taking = null;
        if (person is not null)
        {
            (Pin? pin, error) = NewPin.Read(host.Surroundings, person, Role.Supervisor);
            if (pin is null)
            {
                return host.Refuse(error!);
            }

            taking = new Credential.Person(person, pin);
        }

        long lost = 0;
        (JournalVerdict? verdict, error) = services.GetRequiredService<Unlocker>().With(folder.States, paper, access =>
            JournalBackup.Restore(backup, folder.JournalFile, access, taking, restoring =>
            {
                lost = restoring.Lost;
                return Told(restoring, person);
            }));
        if (verdict is null || error is not null)
        {
            return host.Refuse(error!);
        }

        int code = CopyReport.Write(host, verdict, null, backup, $"{folder.JournalFile}: restored, {verdict.Events} events, verified");
        if (code == ExitCodes.Done && lost > 0)
        {
            host.Surroundings.Error.WriteLine($"handsfree: {lost} events that this device has seen are not in this backup; look for a newer one");
        }

        return code;
    }

    private List<ReadOnlyMemory<byte>> Told(JournalRestoring restoring, string? supervisor)
    {
        DateTimeOffset at = host.Surroundings.Time.GetUtcNow();
        string by = restoring.By?.Person ?? "device";
        string id = JournalDesk.NextId(at);
        List<ReadOnlyMemory<byte>> events =
        [
            JournalEventCodec.Encode(new JournalRestored(id, by, at, restoring.Events, restoring.OtherDevice) { Lost = restoring.Lost }),
        ];
        if (supervisor is not null)
        {
            events.Add(JournalEventCodec.Encode(new PersonAdded(JournalDesk.NextId(at), by, at, supervisor, null, Role.Supervisor)));
        }

        return events;
    }

    private (Credential? Paper, string? Error) Paper()
    {
        (RecoveryKey? key, string? wrong) = RecoveryText.Read(host.Surroundings);
        return key is null ? (null, wrong) : (new Credential.Recovery(key), null);
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
