using HandsFree.Store.Devices;
using HandsFree.Store.Keys;
using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>What an open journal knows of itself: whose it is and how its events are read. Who may open it changes while it is open, also by
/// another process; <see cref="Refresh"/> follows.</summary>
internal sealed class JournalUnlocked : IDisposable
{
    private readonly Lock gate = new();
    private readonly List<IDisposable> used = [];
    private KeysInForce keys;

    public JournalUnlocked(string path, JournalOptions options, byte[] id, DeviceState device, Place? place, TimeProvider time, KeysInForce keys)
    {
        (Path, Options, Id, Device, Place, Time) = (path, options, id, device, place, time);
        this.keys = keys;
        used.Add(keys);
    }

    public string Path { get; }

    public JournalOptions Options { get; }

    public byte[] Id { get; }

    public DeviceState Device { get; }

    /// <summary>What this device remembers of where the journal lies; null for a copy that has no place yet.</summary>
    public Place? Place { get; set; }

    public TimeProvider Time { get; }

    /// <summary>Where this device keeps its part of journals.</summary>
    public required string States { get; init; }

    /// <summary>Who may open it, who opened it, and its data keys.</summary>
    public KeysInForce Keys
    {
        get
        {
            lock (gate)
            {
                return keys;
            }
        }
    }

    /// <summary>Who opened it; null where nobody is set up.</summary>
    public Holder? Holder => Keys.Holder;

    /// <summary>Counts wrong PINs.</summary>
    public Lockout Lockout => new(Device, Place, Time);

    /// <summary>Other keys are in force: this process changed them.</summary>
    public void Take(KeysInForce next)
    {
        lock (gate)
        {
            used.Add(next);
            keys = next;
        }
    }

    /// <summary>Reads who may open it now, where another process changed that.</summary>
    /// <exception cref="JournalRemovedException">Who opened it may open it no more, or the list is not as it was written.</exception>
    public void Refresh(SqliteConnection connection)
    {
        lock (gate)
        {
            if (JournalRows.KeyringVersion(connection) == keys.Chain.Version)
            {
                return;
            }

            (KeyringChain? chain, string? wrong) = KeyringChain.Read(JournalRows.Keyrings(connection), Id);
            if (chain is null)
            {
                throw new JournalRemovedException(JournalErrors.KeysAltered(Path, wrong!));
            }

            keys = keys.Following(chain, Id) ?? throw new JournalRemovedException(JournalErrors.Removed(Path));
            used.Add(keys);
        }
    }

    public void Dispose()
    {
        foreach (IDisposable each in used)
        {
            each.Dispose();
        }

        Place?.Dispose();
        Device.Dispose();
    }
}
