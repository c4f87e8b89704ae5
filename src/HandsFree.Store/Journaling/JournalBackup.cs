using System.Security.Cryptography;
using HandsFree.Core.People;
using HandsFree.Store.Devices;
using HandsFree.Store.Keys;
using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>Copies of a journal. Events are sealed in it, so a backup is too, and neither making nor verifying one needs a PIN.</summary>
public static class JournalBackup
{
    /// <summary>Copies a journal that may be in use, verifies the copy, and only then gives it its name.</summary>
    /// <param name="path">The journal.</param>
    /// <param name="target">The backup; must not exist.</param>
    /// <param name="states">Where this device keeps its part of journals.</param>
    /// <returns>What was found in the backup, or one line that says why there is none.</returns>
    public static (JournalVerdict? Verdict, JournalError? Error) Make(string path, string target, string states) =>
        Copied(path, target, states, _ => null);

    /// <summary>Puts a backup where no journal is. On the device that wrote it nothing else is needed. On another one the recovery key
    /// unlocks it: this device gets a part of its own, and one supervisor a PIN; nobody else's PIN from the other device works here.</summary>
    /// <param name="backup">The backup.</param>
    /// <param name="target">The journal; must not exist.</param>
    /// <param name="states">Where this device keeps its part of journals.</param>
    /// <param name="taking">The recovery key and the supervisor's new PIN; null on the device that wrote it.</param>
    /// <returns>What was found in the restored journal, or one line that says why there is none.</returns>
    public static (JournalVerdict? Verdict, JournalError? Error) Restore(
        string backup, string target, string states, (RecoveryKey Key, Credential.Person Supervisor)? taking) =>
        Copied(backup, target, states, copy => Adopt(backup, copy, states, taking));

    private static (JournalVerdict? Verdict, JournalError? Error) Copied(
        string from, string target, string states, Func<SqliteConnection, JournalError?> change)
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
            error = Copy(from, draft, change);
            if (error is not null)
            {
                return (null, error);
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

    private static JournalError? Copy(string from, string draft, Func<SqliteConnection, JournalError?> change)
    {
        using SqliteConnection copy = JournalConnections.Open(draft, new JournalOptions(), SqliteOpenMode.ReadWriteCreate);
        using (SqliteConnection source = JournalConnections.Open(from, new JournalOptions(), SqliteOpenMode.ReadWrite))
        {
            source.BackupDatabase(copy);
        }

        JournalError? error = change(copy);
        JournalConnections.Execute(copy, "PRAGMA journal_mode = DELETE;");
        return error;
    }

    private static JournalError? Adopt(
        string backup, SqliteConnection copy, string states, (RecoveryKey Key, Credential.Person Supervisor)? taking)
    {
        byte[] id = JournalRows.Id(copy);
        if (DeviceState.Exists(states, id))
        {
            using DeviceState known = DeviceState.Open(states, id);
            known.ForgetHead();
            return null;
        }

        if (taking is not var (recovery, supervisor))
        {
            return JournalErrors.OtherDevice(backup);
        }

        KeyWrap paper = new(id, null);
        Credential.Recovery credential = new(recovery);
        if (JournalRows.Slot(copy, paper.Id(credential)) is not { } slot || paper.Unwrap(slot, credential) is not var (key, _))
        {
            return JournalErrors.WrongPin(backup, isRecovery: true, TimeSpan.Zero);
        }

        using (key)
        {
            using DeviceState device = DeviceState.Make(states, id);
            using SqliteTransaction transaction = copy.BeginTransaction();
            JournalRows.RemoveSlots(copy, KeySlotKind.Person);
            JournalRows.SetSlot(copy, new KeyWrap(id, device.Secret).Wrap(key, supervisor, Role.Supervisor));
            transaction.Commit();
        }

        return null;
    }
}
