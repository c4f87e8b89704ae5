using BenchmarkDotNet.Attributes;
using HandsFree.Core.Journal;
using HandsFree.Store.Journaling;
using HandsFree.Store.Keys;

namespace HandsFree.Benchmarks.Micro;

/// <summary>Appending to a journal on this machine's disk; each append is flushed.</summary>
public class JournalAppend
{
    private readonly JournalEvent reading = ShiftEvents.Make(2)[1];
    private DirectoryInfo folder = null!;
    private IJournal journal = null!;
    private ReadOnlyMemory<byte> body;
    private ReadOnlyMemory<byte>[] ten = [];

    /// <summary>Before the clock runs.</summary>
    [GlobalSetup]
    public void Setup()
    {
        folder = Directory.CreateTempSubdirectory("handsfree-journal-");
        body = JournalEventCodec.Encode(reading);
        ten = [.. Enumerable.Repeat(body, 10)];
        JournalAccess access = new(Path.Combine(folder.FullName, "state"), new Credential.Device(), TimeProvider.System);
        if (!HandsFree.Store.Journaling.Journal.Open(Path.Combine(folder.FullName, "journal.db"), access).TryGet(out var opened, out JournalError? error))
        {
            throw new InvalidDataException(error.ToString());
        }

        journal = opened;
    }

    /// <summary>After the clock.</summary>
    [GlobalCleanup]
    public void Cleanup()
    {
        journal.Dispose();
        folder.Delete(recursive: true);
    }

    /// <summary>One confirmed value.</summary>
    [Benchmark]
    public long One() => journal.Append(body);

    /// <summary>Ten with one flush.</summary>
    [Benchmark]
    public long Ten() => journal.AppendAll(ten);

    /// <summary>An event to bytes.</summary>
    [Benchmark]
    public object Encode() => JournalEventCodec.Encode(reading);

    /// <summary>Bytes to an event.</summary>
    [Benchmark]
    public object Decode() => JournalEventCodec.Decode(body.Span);
}
