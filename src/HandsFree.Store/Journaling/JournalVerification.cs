using System.Security.Cryptography;
using HandsFree.Store.Devices;
using HandsFree.Store.Sealing;
using Microsoft.Data.Sqlite;

namespace HandsFree.Store.Journaling;

/// <summary>Walks a journal's chain without its key: pages, numbers, hashes, the signature of its end, and what this device has seen of
/// it.</summary>
public static class JournalVerification
{
    private const int MostFindings = 20;

    /// <summary>Verifies a file, changing nothing.</summary>
    /// <param name="path">The file.</param>
    /// <param name="states">Where this device keeps its part of journals.</param>
    /// <param name="options">Waiting time; the defaults where null.</param>
    /// <param name="comparesWithDevice">Whether what this device has seen of the journal must be in it; a backup may be older.</param>
    /// <returns>What was found, or one line that says why the file can't be looked at.</returns>
    public static (JournalVerdict? Verdict, JournalError? Error) Verify(
        string path, string states, JournalOptions? options = null, bool comparesWithDevice = true)
    {
        string full = Path.GetFullPath(path);
        try
        {
            return JournalCheck.File(full) is { } wrong ? (null, wrong) : Walk(full, states, options ?? new JournalOptions(), comparesWithDevice);
        }
        catch (SqliteException failure)
        {
            return (null, JournalErrors.From(full, failure));
        }
        catch (CryptographicException failure)
        {
            return (null, JournalErrors.DeviceBroken(full, failure.Message.ReplaceLineEndings(" ")));
        }
        catch (Exception failure) when (failure is InvalidCastException or InvalidOperationException)
        {
            return (null, JournalErrors.NotReadable(full));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return (null, JournalErrors.NotOpened(full, failure.Message.ReplaceLineEndings(" ")));
        }
    }

    private static (JournalVerdict? Verdict, JournalError? Error) Walk(
        string path, string states, JournalOptions options, bool comparesWithDevice)
    {
        using SqliteConnection connection = JournalConnections.Open(path, options, SqliteOpenMode.ReadWrite);
        if (JournalCheck.Marks(path, connection) is { } wrong)
        {
            return (null, wrong);
        }

        using SqliteTransaction snapshot = connection.BeginTransaction(deferred: true);
        List<string> findings = [.. JournalRows.Integrity(connection, MostFindings)];
        findings.AddRange(Tables(connection));
        byte[] id = JournalRows.Id(connection);
        var (count, hash) = WalkChain(connection, id, findings);
        JournalHead? head = JournalRows.Head(connection);
        findings.AddRange(Signature(connection, id, count, hash, head));
        bool known = DeviceState.Exists(states, id);
        if (known && comparesWithDevice)
        {
            using DeviceState device = DeviceState.Open(states, id);
            findings.AddRange(OfDevice(connection, id, count, head, device));
        }

        return (new JournalVerdict(count, [.. findings.Take(MostFindings)], known, JournalRows.Devices(connection).Count), null);
    }

    private static IEnumerable<string> Tables(SqliteConnection connection)
    {
        if (JournalRows.BrokenSlots(connection) is > 0 and var broken)
        {
            yield return $"{broken} of the keys are not as they were written";
        }

        using SqliteConnection model = new("Data Source=:memory:");
        model.Open();
        JournalConnections.Execute(model, JournalSchema.Create);
        if (!JournalRows.Schema(connection).SequenceEqual(JournalRows.Schema(model)))
        {
            yield return "the tables or their guards are not as they were laid down";
        }
    }

    private static (long Count, byte[] Hash) WalkChain(SqliteConnection connection, byte[] id, List<string> findings)
    {
        Dictionary<long, Epoch> epochs = JournalRows.Epochs(connection);
        byte[] header = new byte[EventHeader.Size];
        byte[] previous = EventHeader.Beginning(id);
        HashSet<(long, long)> sealings = [];
        long count = 0;
        foreach (SealedEvent entry in JournalRows.Events(connection))
        {
            count++;
            if (entry.Sequence != count)
            {
                findings.Add(entry.Sequence == count + 1 ? $"event {count} is missing" : $"events {count} to {entry.Sequence - 1} are missing");
                count = entry.Sequence;
            }

            if (!epochs.TryGetValue(entry.Epoch, out Epoch? epoch))
            {
                findings.Add($"event {count}: its epoch {entry.Epoch} is missing");
            }
            else
            {
                EventHeader.Write(header, epoch, entry.Sequence, entry.Counter, previous);
                if (!EventHeader.Hash(header, entry.Body).AsSpan().SequenceEqual(entry.Hash))
                {
                    findings.Add($"event {count} is not as it was written");
                }
            }

            if (!sealings.Add((entry.Epoch, entry.Counter)))
            {
                findings.Add($"event {count}: sealed with a nonce that an earlier event has");
            }

            previous = entry.Hash;
        }

        return (count, previous);
    }

    private static IEnumerable<string> Signature(SqliteConnection connection, byte[] id, long count, byte[] hash, JournalHead? head)
    {
        if (head is null)
        {
            return count == 0 ? [] : ["the signature of the end is missing"];
        }

        byte[]? publicKey = JournalRows.Devices(connection).GetValueOrDefault(head.Device);
        return publicKey is null || !SignedHead.IsSigned(publicKey, SignedHead.Bytes(id, head.Sequence, head.Hash), head.Signature)
            ? ["the signature of the end is wrong"]
            : head.Sequence > count ? [$"events {count + 1} to {head.Sequence} are missing at the end"]
            : head.Sequence < count || !head.Hash.AsSpan().SequenceEqual(hash) ? [$"what was signed is not the end: event {head.Sequence} of {count}"]
            : [];
    }

    private static IEnumerable<string> OfDevice(SqliteConnection connection, byte[] id, long count, JournalHead? head, DeviceState device)
    {
        if (head is not null && !JournalRows.Devices(connection).GetValueOrDefault(head.Device, []).AsSpan().SequenceEqual(device.PublicKey))
        {
            yield return "the end is not signed by this device";
        }

        if (device.LastHead() is var (had, hash))
        {
            if (had > count)
            {
                yield return $"events {count + 1} to {had} are missing at the end: this device has seen them";
            }
            else if (!(JournalRows.Hash(connection, id, had) ?? []).AsSpan().SequenceEqual(hash))
            {
                yield return $"event {had} is another than this device has seen";
            }
        }
    }
}
