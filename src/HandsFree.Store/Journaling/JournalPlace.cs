using HandsFree.Store.Devices;
using HandsFree.Store.Keys;
using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>Makes this device's memory of where a journal lies.</summary>
internal static class JournalPlace
{
    /// <summary>As the journal ends now.</summary>
    public static Place Make(string states, string path, byte[] id, DeviceState device, SqliteConnection connection, KeyringChain chain)
    {
        (long sequence, byte[] hash) = JournalRows.Last(connection, id);
        int keyring = chain.Version;
        return Place.Make(states, path, id, device, new SeenHead(sequence, hash, keyring, chain.HashOf(keyring)!, 0));
    }
}
