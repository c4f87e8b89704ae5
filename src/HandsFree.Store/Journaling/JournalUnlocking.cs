using HandsFree.Store.Devices;
using HandsFree.Store.Keys;
using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>From a credential to the keys.</summary>
internal static class JournalUnlocking
{
    /// <summary>Whether the device alone opens the journal: nobody was ever set up.</summary>
    public static bool DeviceSuffices(SqliteConnection connection) => JournalRows.KeyringVersion(connection) == 0;

    /// <summary>The keys, or what is wrong. A wrong PIN changes nothing in the journal; it is counted beside it.</summary>
    public static (KeysInForce? Keys, JournalError? Error) Unlock(
        string path, SqliteConnection connection, byte[] journal, DeviceState device, Place? place, JournalAccess access)
    {
        (KeyringChain? chain, string? wrong) = KeyringChain.Read(JournalRows.Keyrings(connection), journal);
        if (chain is null)
        {
            return (null, JournalErrors.KeysAltered(path, wrong!));
        }

        // What this device has seen is never taken back: a list that is shorter, or none again.
        if (place?.Last is { } seen && !access.Accepts
            && !(chain.HashOf(seen.Keyring) ?? []).AsSpan().SequenceEqual(seen.Keyring == 0 ? chain.HashOf(0) : seen.KeyringHash))
        {
            return (null, JournalErrors.KeysAltered(path, "the list of who may open is another than this device has seen"));
        }

        KeyWrap wrap = new(journal, device.Secret);
        if (chain.Version == 0)
        {
            return JournalRows.Slot(connection, wrap.Id(new Credential.Device())) is { } slot
                && wrap.Unwrap(slot, new Credential.Device()) is { Length: DataKey.Size } key
                ? (KeysInForce.OfDevice(chain, new DataKey(key)), null)
                : (null, JournalErrors.DeviceSecretWrong(path));
        }

        return access.Credential is Credential.Device
            ? (null, JournalErrors.NeedsPin(path))
            : WithKey(path, connection, journal, chain, wrap, new Lockout(device, place, access.Time), access.Credential);
    }

    /// <summary>What a holder's slot opens, where it is hers and in the keyring in force; null where the credential is wrong.</summary>
    public static KeysInForce? Opened(KeySlot? slot, KeyringChain chain, KeyWrap wrap, byte[] journal, Credential credential)
    {
        if (slot is null || chain.Current!.BySlot(slot) is not { } member
            || wrap.Unwrap(slot, credential) is not { } content
            || HolderKeys.Read(content) is not var (holder, founder))
        {
            return null;
        }

        bool isHers = holder.Number == member.Number
            && founder.AsSpan().SequenceEqual(chain.Founder)
            && holder.PublicSigning.AsSpan().SequenceEqual(member.Signs);
        KeysInForce? keys = isHers ? KeysInForce.Of(chain, holder, journal) : null;
        if (keys is null)
        {
            holder.Dispose();
        }

        return keys;
    }

    private static (KeysInForce? Keys, JournalError? Error) WithKey(
        string path, SqliteConnection connection, byte[] journal, KeyringChain chain, KeyWrap wrap, Lockout lockout, Credential credential)
    {
        byte[] id = wrap.Id(credential);
        KeySlot? slot = JournalRows.Slot(connection, id);
        bool isKnown = slot is not null && chain.Current!.BySlot(slot) is not null;
        KeysInForce? keys = null;
        TryResult result = lockout.Try(
            id,
            isKnown && credential is Credential.Person person ? person.Id : null,
            credential switch { Credential.Recovery => "recovery key", Credential.Emergency => "emergency key", _ => "PIN" },
            closes: credential is Credential.Person,
            notes: true,
            () => (keys = Opened(slot, chain, wrap, journal, credential)) is not null);
        return result switch
        {
            { IsRight: true } => (keys, null),
            { WasTried: false, IsClosed: true } => (null, JournalErrors.Closed(path)),
            { WasTried: false } => (null, JournalErrors.LockedOut(path, result.Wait)),
            _ => (null, JournalErrors.WrongPin(path, credential, result.Wait)),
        };
    }
}
