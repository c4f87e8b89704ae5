using System.Security.Cryptography;
using HandsFree.Store.Keys;
using HandsFree.Store.Sealing;
using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>Walks the events of a journal without a data key: numbers, hashes, the keyring that each names, the writer's signature.</summary>
internal sealed class ChainWalk : IDisposable
{
    private const int Batch = 512;

    private readonly SqliteConnection connection;
    private readonly byte[] journal;
    private readonly KeyringChain chain;
    private readonly bool signatures;
    private readonly List<string> findings;
    private readonly Dictionary<long, Epoch> epochs;
    private readonly Dictionary<int, ThreadLocal<ECDsa?>> writers = [];
    private readonly HashSet<(long, long)> sealings = [];
    private readonly byte[] header = new byte[EventHeader.Size];
    private long keyring;

    public ChainWalk(SqliteConnection connection, byte[] journal, KeyringChain chain, bool signatures, List<string> findings)
    {
        (this.connection, this.journal, this.chain, this.signatures, this.findings) = (connection, journal, chain, signatures, findings);
        epochs = JournalRows.Epochs(connection);
        Hash = EventHeader.Beginning(journal);
        foreach (Member member in chain.All.SelectMany(each => each.Members).DistinctBy(member => member.Number))
        {
            writers[member.Number] = new ThreadLocal<ECDsa?>(() => PublicKeys.Of(member.Signs), trackAllValues: true);
        }
    }

    /// <summary>The last event's number.</summary>
    public long Count { get; private set; }

    /// <summary>The last event's hash.</summary>
    public byte[] Hash { get; private set; }

    /// <summary>Walks, and adds what it finds.</summary>
    public void Walk()
    {
        IEnumerable<SealedEvent[]> batches = JournalRows.Events(connection).Select(Linked).Chunk(Batch);
        foreach (long[] unsigned in OrderedWork.InOrder(batches, Unsigned))
        {
            findings.AddRange(unsigned.Select(sequence => $"event {sequence} is not signed by who it says"));
        }

        if (Count > 0 && keyring != chain.Version)
        {
            findings.Add("the list of who may open was changed and no event tells of it");
        }
    }

    public void Dispose()
    {
        foreach (ThreadLocal<ECDsa?> writer in writers.Values)
        {
            foreach (ECDsa? key in writer.Values)
            {
                key?.Dispose();
            }

            writer.Dispose();
        }
    }

    private SealedEvent Linked(SealedEvent entry)
    {
        Count++;
        if (entry.Sequence != Count)
        {
            findings.Add(entry.Sequence == Count + 1 ? $"event {Count} is missing" : $"events {Count} to {entry.Sequence - 1} are missing");
            Count = entry.Sequence;
        }

        if (!epochs.TryGetValue(entry.Epoch, out Epoch? epoch))
        {
            findings.Add($"event {Count}: its epoch {entry.Epoch} is missing");
        }
        else if (entry.Keyring < keyring || chain.HashOf(entry.Keyring) is not { } keys || chain.GenerationOf(entry.Keyring) != epoch.Generation)
        {
            findings.Add($"event {Count} was not written under the keys that were in force");
        }
        else
        {
            EventHeader.Write(header, epoch, entry.Sequence, entry.Counter, keys, entry.Writer, Hash);
            if (!EventHeader.Hash(header, entry.Body).AsSpan().SequenceEqual(entry.Hash))
            {
                findings.Add($"event {Count} is not as it was written");
            }
        }

        if (!sealings.Add((entry.Epoch, entry.Counter)))
        {
            findings.Add($"event {Count}: sealed with a nonce that an earlier event has");
        }

        keyring = Math.Max(keyring, entry.Keyring);
        Hash = entry.Hash;
        return entry;
    }

    private long[] Unsigned(SealedEvent[] batch) => signatures ? [.. batch.Where(entry => !IsSigned(entry)).Select(entry => entry.Sequence)] : [];

    private bool IsSigned(SealedEvent entry) => entry.Keyring == 0
        ? entry is { Writer: 0, Signature.Length: 0 }
        : chain.Of(entry.Keyring)?.ByNumber((int)entry.Writer) is not null
            && writers[(int)entry.Writer].Value is { } key
            && key.VerifyData(SealedEvent.Signed(journal, entry.Hash), entry.Signature, HashAlgorithmName.SHA256);
}
