namespace HandsFree.Store.Journaling;

/// <summary>A journal of typed events over a journal of bytes; how an event becomes bytes comes in from outside.</summary>
/// <typeparam name="TEvent">The events.</typeparam>
/// <param name="journal">The bytes' journal; who made it disposes of it.</param>
/// <param name="encode">An event as bytes, the same bytes for the same event.</param>
/// <param name="decode">The event that an entry stands for; its exceptions pass through to who reads.</param>
public sealed class EventJournal<TEvent>(
    IJournal journal,
    Func<TEvent, ReadOnlyMemory<byte>> encode,
    Func<JournalEntry, TEvent> decode)
{
    /// <summary>How many events there are.</summary>
    /// <exception cref="JournalReadException">The file can't be read.</exception>
    public long Count => journal.Count;

    /// <summary>Appends one event and returns its sequence number once it is flushed to the disk.</summary>
    /// <exception cref="JournalWriteException">Nothing was appended.</exception>
    public long Append(TEvent happened) => journal.Append(encode(happened));

    /// <summary>Appends several events, all or none, and returns the sequence number of the last.</summary>
    /// <exception cref="JournalWriteException">None was appended.</exception>
    public long AppendAll(IEnumerable<TEvent> happened) => journal.AppendAll([.. happened.Select(encode)]);

    /// <summary>Appends several events, all or none, without waiting for the disk (<see cref="IJournal.AppendLoose"/>), and returns the
    /// sequence number of the last.</summary>
    /// <exception cref="JournalWriteException">None was appended.</exception>
    public long AppendLoose(IEnumerable<TEvent> happened) => journal.AppendLoose([.. happened.Select(encode)]);

    /// <summary>The events from a sequence number on, in order.</summary>
    /// <exception cref="JournalReadException">The file can't be read.</exception>
    public IEnumerable<(long Sequence, TEvent Event)> ReadFrom(long sequence) =>
        journal.ReadFrom(sequence).Select(entry => (entry.Sequence, decode(entry)));

    /// <summary>As <see cref="ReadFrom"/>, but of an event that can't be decoded (<see cref="InvalidDataException"/>) it says why, and goes on.</summary>
    /// <exception cref="JournalReadException">The file can't be read.</exception>
    public IEnumerable<(long Sequence, TEvent? Event, string? Why)> TryReadFrom(long sequence) => journal.ReadFrom(sequence).Select(Tried);

    private (long Sequence, TEvent? Event, string? Why) Tried(JournalEntry entry)
    {
        try
        {
            return (entry.Sequence, decode(entry), null);
        }
        catch (InvalidDataException wrong)
        {
            return (entry.Sequence, default, wrong.Message.ReplaceLineEndings(" "));
        }
    }
}
