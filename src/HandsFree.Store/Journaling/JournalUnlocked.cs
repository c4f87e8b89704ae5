using HandsFree.Store.Devices;
using HandsFree.Store.Keys;

namespace HandsFree.Store.Journaling;

/// <summary>What an open journal knows of itself: whose it is and how its events are read.</summary>
internal sealed record JournalUnlocked(string Path, JournalOptions Options, byte[] Id, DataKey Key, Holder? Holder, DeviceState Device, TimeProvider Time)
    : IDisposable
{
    public void Dispose()
    {
        Key.Dispose();
        Device.Dispose();
    }
}
