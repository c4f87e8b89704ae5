using System.Security.Cryptography;
using HandsFree.Store.Journaling;

namespace HandsFree.Store.Sealing;

/// <summary>Opens sealed events, with one cipher for each epoch. Not safe for several threads.</summary>
internal sealed class EventOpener(JournalUnlocked unlocked, IReadOnlyDictionary<long, Epoch> epochs) : IDisposable
{
    private readonly Dictionary<long, EventCipher> _ciphers = [];

    /// <summary>The event; null where it is not as it was sealed, or follows another than it did.</summary>
    public byte[]? Open(SealedEvent entry, ReadOnlySpan<byte> previous)
    {
        if (!epochs.TryGetValue(entry.Epoch, out Epoch? epoch) || previous.Length != SHA256.HashSizeInBytes)
        {
            return null;
        }

        if (!_ciphers.TryGetValue(entry.Epoch, out EventCipher? cipher))
        {
            _ciphers[entry.Epoch] = cipher = new EventCipher(unlocked.Key, unlocked.Id, epoch);
        }

        Span<byte> header = stackalloc byte[EventHeader.Size];
        EventHeader.Write(header, epoch, entry.Sequence, entry.Counter, previous);
        return cipher.Open(entry.Counter, header, entry.Body);
    }

    public void Dispose()
    {
        foreach (EventCipher cipher in _ciphers.Values)
        {
            cipher.Dispose();
        }
    }
}
