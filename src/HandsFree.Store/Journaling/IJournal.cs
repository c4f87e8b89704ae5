namespace HandsFree.Store.Journaling;

/// <summary>The append-only record of one device: events as opaque bytes, numbered 1, 2, 3 without a gap. What is inside
/// an event is known to who writes it, never to the journal.</summary>
public interface IJournal : IDisposable
{
    /// <summary>How many events there are; also the sequence number of the last one, 0 for an empty journal.</summary>
    /// <exception cref="JournalReadException">The file can't be read.</exception>
    long Count { get; }

    /// <summary>Appends one event and returns its sequence number once the event is flushed to the disk.</summary>
    /// <param name="body">The event; copied, any length from 0 bytes on.</param>
    /// <exception cref="JournalWriteException">Nothing was appended; the reason is in the exception and must reach the
    /// user.</exception>
    long Append(ReadOnlyMemory<byte> body);

    /// <summary>Appends several events, all or none, with one flush, and returns the sequence number of the last.</summary>
    /// <param name="bodies">At least one event, in order.</param>
    /// <exception cref="ArgumentException">There is no event.</exception>
    /// <exception cref="JournalWriteException">None was appended.</exception>
    long AppendAll(IReadOnlyList<ReadOnlyMemory<byte>> bodies);

    /// <summary>Appends several events, all or none, without waiting for the disk: a program that is killed loses none of them, a power cut
    /// may. The next append that is flushed flushes them too. Nothing may be announced of them.</summary>
    /// <param name="bodies">At least one event, in order.</param>
    /// <exception cref="ArgumentException">There is no event.</exception>
    /// <exception cref="JournalWriteException">None was appended.</exception>
    long AppendLoose(IReadOnlyList<ReadOnlyMemory<byte>> bodies);

    /// <summary>The events from a sequence number on, in order, one at a time from the disk: a snapshot of the moment
    /// when the first is asked for. Events appended later are not in it, and appending meanwhile is allowed.</summary>
    /// <param name="sequence">The first number wanted, 1 or more; beyond the last gives no event.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is below 1.</exception>
    /// <exception cref="JournalReadException">The file can't be read or a number is missing.</exception>
    IEnumerable<JournalEntry> ReadFrom(long sequence);
}
