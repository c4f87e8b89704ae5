using System.Security.Cryptography;
using System.Text.Json;
using HandsFree.Store.Devices;
using HandsFree.Store.Keys;
using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>Opens a journal step by step: the file, its marks, this device's part, the key, the chain's end.</summary>
internal static class JournalOpener
{
    public static JournalOpening Open(string path, JournalAccess access, JournalOptions options)
    {
        try
        {
            return OpenFile(path, access, options);
        }
        catch (SqliteException failure)
        {
            return new JournalOpening(JournalErrors.From(path, failure));
        }
        catch (Exception failure) when (failure is CryptographicException or JsonException)
        {
            return new JournalOpening(JournalErrors.DeviceBroken(path, failure.Message.ReplaceLineEndings(" ")));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return new JournalOpening(JournalErrors.NotOpened(path, failure.Message.ReplaceLineEndings(" ")));
        }
    }

    private static JournalOpening OpenFile(string path, JournalAccess access, JournalOptions options)
    {
        if (Directory.Exists(path))
        {
            return new JournalOpening(JournalErrors.IsFolder(path));
        }

        JournalError? error = File.Exists(path) ? null : JournalCreation.Create(path, access.States, options);
        error ??= JournalCheck.File(path);
        error ??= JournalMigration.ToPresent(path, access, options);
        if (error is not null)
        {
            return new JournalOpening(error);
        }

        SqliteConnection connection = JournalConnections.Open(path, options, SqliteOpenMode.ReadWrite);
        JournalUnlocked? unlocked = null;
        try
        {
            (unlocked, error) = Unlocked(path, access, options, connection);
            if (error is null)
            {
                return new JournalOpening(new Journal(unlocked!, connection));
            }
        }
        catch
        {
            unlocked?.Dispose();
            connection.Dispose();
            throw;
        }

        connection.Dispose();
        return new JournalOpening(error);
    }

    private static (JournalUnlocked? Unlocked, JournalError? Error) Unlocked(
        string path, JournalAccess access, JournalOptions options, SqliteConnection connection)
    {
        if (JournalCheck.Content(path, connection) is { } wrong)
        {
            return (null, wrong);
        }

        byte[] id = JournalRows.Id(connection);
        if (!DeviceState.Exists(access.States, id))
        {
            return (null, JournalErrors.OtherDevice(path));
        }

        DeviceState device = DeviceState.Open(access.States, id);
        (DataKey? key, Holder? holder, JournalError? error) = JournalUnlocking.Unlock(path, connection, id, device, access);
        error ??= Older(path, connection, id, device);
        if (error is null)
        {
            return (new JournalUnlocked(path, options, id, key!, holder, device, access.Time), null);
        }

        key?.Dispose();
        device.Dispose();
        return (null, error);
    }

    // What this device has seen must still be there. The head that it keeps is never ahead of what is flushed.
    private static JournalError? Older(string path, SqliteConnection connection, byte[] id, DeviceState device)
    {
        if (device.LastHead() is not var (had, hash) || JournalRows.Hash(connection, id, had) is { } found && found.AsSpan().SequenceEqual(hash))
        {
            return null;
        }

        long has = JournalConnections.Number(connection, JournalSchema.LastSequence);
        return has >= had ? JournalErrors.Altered(path, had) : JournalErrors.Older(path, has, had);
    }
}
