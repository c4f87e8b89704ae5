using System.Security.Cryptography;
using HandsFree.Store.Journaling;

namespace HandsFree.Store.Sealing;

/// <summary>Seals the events of one opening under one set of keys. Its counter goes up with every sealing and never back, not even when the write that it was
/// for fails: no two bodies are ever sealed under the same key and nonce.</summary>
internal sealed class EventSealer : IDisposable
{
    private readonly byte[] journal;
    private readonly EventCipher cipher;
    private long counter;

    public EventSealer(KeysInForce keys, byte[] journal, byte[] device)
    {
        (Keys, this.journal) = (keys, journal);
        Epoch = new Epoch(device, RandomNumberGenerator.GetBytes(32), keys.Data.Generation);
        cipher = new EventCipher(keys.Data.Current, journal, Epoch);
    }

    public Epoch Epoch { get; }

    /// <summary>The keys that it seals and signs with.</summary>
    public KeysInForce Keys { get; }

    public SealedEvent Seal(long epochNumber, long sequence, ReadOnlySpan<byte> previous, ReadOnlySpan<byte> body)
    {
        long next = ++counter;
        int keyring = Keys.Chain.Version;
        int writer = Keys.HolderKeys?.Number ?? 0;
        Span<byte> header = stackalloc byte[EventHeader.Size];
        EventHeader.Write(header, Epoch, sequence, next, Keys.Chain.HashOf(keyring), writer, previous);
        byte[] sealedBody = cipher.Seal(next, header, body);
        byte[] hash = EventHeader.Hash(header, sealedBody);
        return new SealedEvent(
            sequence, epochNumber, next, keyring, writer, sealedBody, hash, Keys.HolderKeys?.Sign(SealedEvent.Signed(journal, hash)) ?? []);
    }

    public void Dispose() => cipher.Dispose();
}
