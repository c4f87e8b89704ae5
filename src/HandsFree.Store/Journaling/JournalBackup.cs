using System.Security.Cryptography;
using HandsFree.Core.People;
using HandsFree.Store.Devices;
using HandsFree.Store.Keys;
using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>Copies of a journal. Events are sealed in it, so a backup is too, and neither making nor verifying one needs a PIN; putting one
/// in the place of a journal does.</summary>
public static class JournalBackup
{
    /// <summary>Copies a journal that may be in use, verifies the copy, and only then gives it its name.</summary>
    /// <param name="path">The journal.</param>
    /// <param name="target">The backup; must not exist.</param>
    /// <param name="states">Where this device keeps its part of journals.</param>
    /// <returns>What was found in the backup, or one line that says why there is none.</returns>
    public static (JournalVerdict? Verdict, JournalError? Error) Make(string path, string target, string states) =>
        Copied(path, target, states, (_, _) => null);

    /// <summary>Puts a backup where no journal is, and writes that into it: for a supervisor or the recovery key; for the device alone as long
    /// as nobody is set up. The journal that this device has elsewhere stays as it is, so that a restore can be tried in another folder. On another device than the
    /// one that wrote it only the recovery key unlocks it: this device gets a part of its own, and one supervisor a PIN; nobody else's PIN from
    /// the other device works here.</summary>
    /// <param name="backup">The backup.</param>
    /// <param name="target">The journal; must not exist.</param>
    /// <param name="access">Who restores.</param>
    /// <param name="supervisor">On another device: the supervisor and her new PIN; else null.</param>
    /// <param name="happened">Makes the events that tell of it: one; on another device a second one, of the supervisor who was set up.</param>
    /// <returns>What was found in the restored journal, or one line that says why there is none.</returns>
    public static (JournalVerdict? Verdict, JournalError? Error) Restore(
        string backup, string target, JournalAccess access, Credential.Person? supervisor, Func<JournalRestoring, IReadOnlyList<ReadOnlyMemory<byte>>> happened)
    {
        ArgumentNullException.ThrowIfNull(access);
        ArgumentNullException.ThrowIfNull(happened);
        (JournalVerdict? verdict, JournalError? error) = Copied(
            backup, target, access.States, (draft, events) => Adopt(backup, draft, events, access, supervisor, happened));
        if (error is null && verdict!.Findings.Count == 0)
        {
            error = Remember(Path.GetFullPath(target), access);
        }

        return (verdict, error);
    }

    private static (JournalVerdict? Verdict, JournalError? Error) Copied(
        string from, string target, string states, Func<string, long, JournalError?> change)
    {
        string to = Path.GetFullPath(target);
        if (Path.Exists(to))
        {
            return (null, JournalErrors.Exists(to));
        }

        string draft = $"{to}.new-{Environment.ProcessId}";
        try
        {
            (JournalVerdict? verdict, JournalError? error) = JournalVerification.Verify(from, states, comparesWithDevice: false);
            if (error is not null || verdict!.Findings.Count > 0)
            {
                return (verdict, error);
            }

            JournalCreation.DeleteDraft(draft);
            Copy(from, draft);
            error = change(draft, verdict.Events);
            if (error is not null)
            {
                return (null, error);
            }

            using (SqliteConnection copy = JournalConnections.Open(draft, new JournalOptions(), SqliteOpenMode.ReadWrite))
            {
                JournalConnections.Execute(copy, "PRAGMA journal_mode = DELETE;");
            }

            (verdict, error) = JournalVerification.Verify(draft, states, comparesWithDevice: false);
            if (error is null && verdict!.Findings.Count == 0)
            {
                File.Move(draft, to, overwrite: false);
            }

            return (verdict, error);
        }
        catch (SqliteException failure)
        {
            return (null, JournalErrors.From(to, failure));
        }
        catch (JournalWriteException failure)
        {
            return (null, new JournalError(failure.Problem, failure.Message));
        }
        catch (CryptographicException failure)
        {
            return (null, JournalErrors.DeviceBroken(to, failure.Message.ReplaceLineEndings(" ")));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return (null, JournalErrors.NotCreated(to, failure.Message.ReplaceLineEndings(" ")));
        }
        finally
        {
            JournalCreation.DeleteDraft(draft);
        }
    }

    private static void Copy(string from, string draft)
    {
        PrivateFile.Touch(draft);
        using SqliteConnection copy = JournalConnections.Open(draft, new JournalOptions(), SqliteOpenMode.ReadWriteCreate);
        using SqliteConnection source = JournalConnections.Open(from, new JournalOptions(), SqliteOpenMode.ReadWrite);
        source.BackupDatabase(copy);
    }

    private static JournalError? Adopt(
        string backup, string draft, long events, JournalAccess access, Credential.Person? supervisor,
        Func<JournalRestoring, IReadOnlyList<ReadOnlyMemory<byte>>> happened)
    {
        SqliteConnection connection = JournalConnections.Open(draft, new JournalOptions(), SqliteOpenMode.ReadWrite);
        JournalUnlocked? unlocked = null;
        try
        {
            byte[] id = JournalRows.Id(connection);
            bool isKnown = DeviceState.Exists(access.States, id);
            JournalError? error;
            (unlocked, error) = isKnown ? Known(backup, draft, id, connection, access) : Unknown(backup, draft, id, connection, access, supervisor);
            if (error is not null)
            {
                return error;
            }

            long lost = isKnown ? Math.Max(0, Place.Furthest(access.States, id, unlocked!.Device) - events) : 0;
            IReadOnlyList<ReadOnlyMemory<byte>> tells = happened(new JournalRestoring(events, lost, !isKnown, unlocked!.Holder));
            using Journal journal = new(unlocked, connection);
            (unlocked, connection) = (null, null!);
            journal.Append(tells[0]);
            if (!isKnown)
            {
                journal.People.Adopt(supervisor!, tells[1]);
            }

            return null;
        }
        finally
        {
            unlocked?.Dispose();
            connection?.Dispose();
        }
    }

    private static (JournalUnlocked? Unlocked, JournalError? Error) Known(
        string backup, string draft, byte[] id, SqliteConnection connection, JournalAccess access)
    {
        DeviceState device = DeviceState.Open(access.States, id, !JournalUnlocking.DeviceSuffices(connection));
        (KeysInForce? keys, JournalError? error) = JournalUnlocking.Unlock(backup, connection, id, device, null, access);
        error ??= keys!.Holder is { Role: < Role.Supervisor } ? JournalErrors.NotRestored(backup) : null;
        if (error is null)
        {
            return (new JournalUnlocked(draft, new JournalOptions(), id, device, null, access.Time, keys!) { States = access.States }, null);
        }

        keys?.Dispose();
        device.Dispose();
        return (null, error);
    }

    private static (JournalUnlocked? Unlocked, JournalError? Error) Unknown(
        string backup, string draft, byte[] id, SqliteConnection connection, JournalAccess access, Credential.Person? supervisor)
    {
        if (access.Credential is not Credential.Recovery recovery || supervisor is null)
        {
            return (null, JournalErrors.OtherDevice(backup));
        }

        KeyWrap paper = new(id, null);
        (KeyringChain? chain, string? wrong) = KeyringChain.Read(JournalRows.Keyrings(connection), id);
        KeysInForce? keys = chain is not { Version: > 0 } ? null
            : JournalUnlocking.Opened(JournalRows.Slot(connection, paper.Id(recovery)), chain, paper, id, recovery);
        return keys is null
            ? (null, wrong is null ? JournalErrors.WrongPin(backup, recovery, TimeSpan.Zero) : JournalErrors.KeysAltered(backup, wrong))
            : (new JournalUnlocked(draft, new JournalOptions(), id, DeviceState.Make(access.States, id, access.Time), null, access.Time, keys) { States = access.States }, null);
    }

    private static JournalError? Remember(string path, JournalAccess access)
    {
        try
        {
            using SqliteConnection connection = JournalConnections.Open(path, new JournalOptions(), SqliteOpenMode.ReadWrite);
            byte[] id = JournalRows.Id(connection);
            (KeyringChain? chain, string? wrong) = KeyringChain.Read(JournalRows.Keyrings(connection), id);
            using DeviceState device = DeviceState.Open(access.States, id, chain is { Version: > 0 });
            using Place? place = chain is null ? null : JournalPlace.Make(access.States, path, id, device, connection, chain);
            return chain is null ? JournalErrors.KeysAltered(path, wrong!) : null;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return JournalErrors.NotOpened(path, failure.Message.ReplaceLineEndings(" "));
        }
    }
}
