using HandsFree.Store.Devices;
using HandsFree.Store.Keys;
using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>From a credential to the data key.</summary>
internal static class JournalUnlocking
{
    /// <summary>Whether the device alone opens the journal: nobody is set up yet.</summary>
    public static bool DeviceSuffices(SqliteConnection connection) => JournalRows.SlotCount(connection, KeySlotKind.Device) > 0;

    /// <summary>The data key and the holder, or what is wrong. A wrong PIN changes nothing in the journal; it is counted beside it.</summary>
    public static (DataKey? Key, Holder? Holder, JournalError? Error) Unlock(
        string path, SqliteConnection connection, byte[] journal, DeviceState device, JournalAccess access)
    {
        KeyWrap wrap = new(journal, device.Secret);
        Credential credential = DeviceSuffices(connection) ? new Credential.Device() : access.Credential;
        if (credential is Credential.Device && !DeviceSuffices(connection))
        {
            return (null, null, JournalErrors.NeedsPin(path));
        }

        byte[] id = wrap.Id(credential);
        bool guarded = credential is not Credential.Device;
        Lockout lockout = new(device.LockoutFile, access.Time);
        if (guarded && lockout.Remaining(id) is { } left && left > TimeSpan.Zero)
        {
            return (null, null, JournalErrors.LockedOut(path, left));
        }

        if (JournalRows.Slot(connection, id) is { } slot && wrap.Unwrap(slot, credential) is var (key, holder))
        {
            if (guarded)
            {
                lockout.Right(id);
            }

            return (key, holder, null);
        }

        return guarded
            ? (null, null, JournalErrors.WrongPin(path, credential is Credential.Recovery, lockout.Wrong(id)))
            : (null, null, JournalErrors.DeviceSecretWrong(path));
    }
}
