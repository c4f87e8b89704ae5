using System.Security.Cryptography;
using HandsFree.Store.Keys;

namespace HandsFree.Store.Sealing;

/// <summary>Seals the events of one opening. Its counter goes up with every sealing and never back, not even when the write that it was
/// for fails: no two bodies are ever sealed under the same key and nonce.</summary>
internal sealed class EventSealer : IDisposable
{
    private readonly EventCipher _cipher;
    private long _counter;

    public EventSealer(DataKey data, ReadOnlySpan<byte> journal, byte[] device)
    {
        Epoch = new Epoch(device, RandomNumberGenerator.GetBytes(32));
        _cipher = new EventCipher(data, journal, Epoch);
    }

    public Epoch Epoch { get; }

    public SealedEvent Seal(long epochNumber, long sequence, ReadOnlySpan<byte> previous, ReadOnlySpan<byte> body)
    {
        long counter = ++_counter;
        Span<byte> header = stackalloc byte[EventHeader.Size];
        EventHeader.Write(header, Epoch, sequence, counter, previous);
        byte[] sealedBody = _cipher.Seal(counter, header, body);
        return new SealedEvent(sequence, epochNumber, counter, sealedBody, EventHeader.Hash(header, sealedBody));
    }

    public void Dispose() => _cipher.Dispose();
}
