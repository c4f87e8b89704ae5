using HandsFree.Store.Keys;
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
    /// <param name="signatures">Whether each event's signature is looked at too; the chain alone is much faster.</param>
    /// <returns>What was found, or one line that says why the file can't be looked at.</returns>
    public static (JournalVerdict? Verdict, JournalError? Error) Verify(
        string path, string states, JournalOptions? options = null, bool comparesWithDevice = true, bool signatures = true)
    {
        string full = Path.GetFullPath(path);
        try
        {
            return !File.Exists(full) && Place.JournalAt(states, full) is not null ? (null, JournalErrors.Gone(full))
                : JournalCheck.File(full) is { } wrong ? (null, wrong)
                : Walk(full, states, options ?? new JournalOptions(), comparesWithDevice, signatures);
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

    /// <summary>Whether an event is the one whose hash was printed on a page.</summary>
    /// <param name="path">The journal.</param>
    /// <param name="sequence">The event's number on the page.</param>
    /// <param name="printed">The 8 signs beside it.</param>
    /// <returns>Whether it is; false too where there is no such event.</returns>
    /// <exception cref="JournalReadException">The file can't be read.</exception>
    public static bool IsAsPrinted(string path, long sequence, string printed)
    {
        ArgumentNullException.ThrowIfNull(printed);
        try
        {
            using SqliteConnection connection = JournalConnections.Open(path, new JournalOptions(), SqliteOpenMode.ReadWrite);
            return JournalRows.Hash(connection, JournalRows.Id(connection), sequence) is { } hash
                && string.Equals(Convert.ToHexStringLower(hash)[..8], printed, StringComparison.OrdinalIgnoreCase);
        }
        catch (SqliteException failure)
        {
            throw new JournalReadException(JournalErrors.From(path, failure), failure);
        }
    }

    private static (JournalVerdict? Verdict, JournalError? Error) Walk(
        string path, string states, JournalOptions options, bool comparesWithDevice, bool signatures)
    {
        using SqliteConnection connection = JournalConnections.Open(path, options, SqliteOpenMode.ReadWrite);
        if (JournalCheck.Marks(path, connection) is { } wrong)
        {
            return (null, wrong);
        }

        using SqliteTransaction snapshot = connection.BeginTransaction(deferred: true);
        List<string> findings = [.. JournalRows.Integrity(connection, MostFindings), .. Tables(connection)];
        byte[] id = JournalRows.Id(connection);
        (KeyringChain? chain, string? altered) = KeyringChain.Read(JournalRows.Keyrings(connection), id);
        if (chain is null)
        {
            return (new JournalVerdict(JournalConnections.Number(connection, JournalSchema.LastSequence), [.. findings, altered!], DeviceState.Exists(states, id), 0), null);
        }

        using ChainWalk walk = new(connection, id, chain, signatures, findings);
        walk.Walk();
        JournalHead? head = JournalRows.Head(connection);
        findings.AddRange(Slots(connection, chain));
        findings.AddRange(Signature(connection, id, walk.Count, walk.Hash, head));
        bool known = DeviceState.Exists(states, id);
        using DeviceState? device = known ? DeviceState.Open(states, id, chain.Version > 0) : null;
        findings.AddRange(Devices(connection, chain, device));
        if (device is not null && comparesWithDevice)
        {
            using Place? place = Place.Open(states, path, id, device);
            findings.AddRange(OfPlace(connection, id, walk.Count, chain, place));
        }

        return (new JournalVerdict(walk.Count, [.. findings.Distinct().Take(MostFindings)], known, JournalRows.Devices(connection).Count), null);
    }

    private static IEnumerable<string> Tables(SqliteConnection connection)
    {
        using SqliteConnection model = new("Data Source=:memory:");
        model.Open();
        JournalConnections.Execute(model, JournalSchema.Create);
        if (!JournalRows.Schema(connection).SequenceEqual(JournalRows.Schema(model)))
        {
            yield return "the tables or their guards are not as they were laid down";
        }
    }

    // Every slot stands in the keyring in force, and every member of it has hers.
    private static IEnumerable<string> Slots(SqliteConnection connection, KeyringChain chain)
    {
        List<KeySlot> slots = JournalRows.Slots(connection);
        if (chain.Current is not { } current)
        {
            return slots is [{ Kind: KeySlotKind.Device }] ? [] : ["the keys are not as they were written"];
        }

        int strange = slots.Count(slot => current.BySlot(slot) is null);
        int missing = current.Members.Count - (slots.Count - strange);
        return
        [
            .. strange > 0 ? [$"{strange} of the keys were put in or changed by somebody else"] : Array.Empty<string>(),
            .. missing > 0 ? [$"{missing} of the keys are missing"] : Array.Empty<string>(),
        ];
    }

    private static IEnumerable<string> Signature(SqliteConnection connection, byte[] id, long count, byte[] hash, JournalHead? head)
    {
        if (head is null)
        {
            return count == 0 ? [] : ["the signature of the end is missing"];
        }

        byte[]? publicKey = JournalRows.Devices(connection).GetValueOrDefault(head.Device);
        return publicKey is null || !PublicKeys.HasSigned(publicKey, SignedHead.Bytes(id, head.Sequence, head.Hash), head.Signature)
            ? ["the signature of the end is wrong"]
            : head.Sequence > count ? [$"events {count + 1} to {head.Sequence} are missing at the end"]
            : head.Sequence < count || !head.Hash.AsSpan().SequenceEqual(hash) ? [$"what was signed is not the end: event {head.Sequence} of {count}"]
            : [];
    }

    // A device writes only where a supervisor or the recovery key has let it; as long as nobody is set up, only the one that made the journal.
    private static IEnumerable<string> Devices(SqliteConnection connection, KeyringChain chain, DeviceState? device)
    {
        byte[][] allowed = chain.Version > 0 ? [.. chain.All.SelectMany(keyring => keyring.Devices)] : device is null ? [] : [device.PublicKey];
        return allowed.Length == 0 ? []
            : [.. JournalRows.Devices(connection).Values.Where(key => !allowed.Any(known => known.AsSpan().SequenceEqual(key))).Select(_ => "written by a device that nobody has let in")];
    }

    private static IEnumerable<string> OfPlace(SqliteConnection connection, byte[] id, long count, KeyringChain chain, Place? place)
    {
        if (place?.Last is not { } seen)
        {
            yield return "what this device remembers of its end is gone";
            yield break;
        }

        if (!(chain.HashOf(seen.Keyring) ?? []).AsSpan().SequenceEqual(seen.KeyringHash))
        {
            yield return "the list of who may open is another than this device has seen";
        }

        if (seen.Sequence > count)
        {
            yield return $"events {count + 1} to {seen.Sequence} are missing at the end: this device has seen them";
        }
        else if (!(JournalRows.Hash(connection, id, seen.Sequence) ?? []).AsSpan().SequenceEqual(seen.Hash))
        {
            yield return $"event {seen.Sequence} is another than this device has seen";
        }
    }
}
