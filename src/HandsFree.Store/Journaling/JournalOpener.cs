using System.Security.Cryptography;
using System.Text.Json;
using HandsFree.Core.People;
using HandsFree.Store.Devices;
using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>Opens a journal step by step: the place, the file, its marks, this device's part, the keys, the chain's end.</summary>
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

        byte[]? known = Place.JournalAt(access.States, path);
        JournalError? error = File.Exists(path) ? null
            : known is not null ? JournalErrors.Gone(path)
            : JournalCreation.Create(path, access, options);
        error ??= JournalCheck.File(path);
        if (error is not null)
        {
            return new JournalOpening(error);
        }

        SqliteConnection connection = JournalConnections.Open(path, options, SqliteOpenMode.ReadWrite);
        JournalUnlocked? unlocked = null;
        try
        {
            (unlocked, error) = Unlocked(path, access, options, connection, known);
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
        string path, JournalAccess access, JournalOptions options, SqliteConnection connection, byte[]? known)
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

        // A new, empty journal is known from its first event on.
        bool isEmpty = JournalConnections.Number(connection, JournalSchema.LastSequence) == 0 && JournalUnlocking.DeviceSuffices(connection);
        bool isUnknown = known is null ? !isEmpty : !known.AsSpan().SequenceEqual(id);
        if (isUnknown && !access.Accepts)
        {
            return (null, known is null ? JournalErrors.UnknownPlace(path) : JournalErrors.OtherJournal(path));
        }

        DeviceState device = DeviceState.Open(access.States, id, !JournalUnlocking.DeviceSuffices(connection));
        Place? place = Place.Open(access.States, path, id, device);
        (KeysInForce? keys, JournalError? error) = JournalUnlocking.Unlock(path, connection, id, device, place, access);
        error ??= place is { Last: null } && !access.Accepts ? JournalErrors.UnknownPlace(path) : null;
        error ??= keys!.Holder is { Role: < Role.Supervisor } && access.Accepts ? JournalErrors.NotAccepted(path) : null;
        error ??= access.Accepts ? null : Older(path, connection, id, place);
        if (error is null)
        {
            if (access.Accepts || place is null)
            {
                place?.Dispose();
                place = JournalPlace.Make(access.States, path, id, device, connection, keys!.Chain);
            }

            return (new JournalUnlocked(path, options, id, device, place, access.Time, keys!) { States = access.States }, null);
        }

        keys?.Dispose();
        place?.Dispose();
        device.Dispose();
        return (null, error);
    }

    // What this device has seen must still be there. The head that it keeps is never ahead of what is flushed.
    private static JournalError? Older(string path, SqliteConnection connection, byte[] id, Place? place)
    {
        if (place?.Last is not { } seen || JournalRows.Hash(connection, id, seen.Sequence) is { } found && found.AsSpan().SequenceEqual(seen.Hash))
        {
            return null;
        }

        long has = JournalConnections.Number(connection, JournalSchema.LastSequence);
        return has >= seen.Sequence ? JournalErrors.Altered(path, seen.Sequence) : JournalErrors.Older(path, has, seen.Sequence);
    }
}
