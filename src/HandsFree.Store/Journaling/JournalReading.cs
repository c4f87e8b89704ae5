using System.Collections.Concurrent;
using HandsFree.Store.Sealing;

namespace HandsFree.Store.Journaling;

/// <summary>Streams the events of a file over a connection of its own, so that reading never holds up the writer. Each event is opened
/// with the hash of the one before: one that was altered, or moved, is named.</summary>
internal static class JournalReading
{
    private const int BatchSize = 256;

    /// <summary>One at a time.</summary>
    public static IEnumerable<JournalEntry> Entries(JournalUnlocked unlocked, long first)
    {
        using JournalSnapshot snapshot = new(unlocked);
        using EventOpener opener = new(unlocked, snapshot.Epochs);
        foreach (ChainedEvent row in snapshot.From(first))
        {
            yield return Opened(unlocked, opener, row);
        }
    }

    /// <summary>Many: opened, and made into something else, by all processors; given out in order.</summary>
    public static IEnumerable<T> Entries<T>(JournalUnlocked unlocked, long first, Func<JournalEntry, T> make)
    {
        using JournalSnapshot snapshot = new(unlocked);
        ConcurrentBag<EventOpener> openers = [];
        try
        {
            foreach (T[] batch in OrderedWork.InOrder(snapshot.From(first).Chunk(BatchSize), Made))
            {
                foreach (T each in batch)
                {
                    yield return each;
                }
            }
        }
        finally
        {
            foreach (EventOpener opener in openers)
            {
                opener.Dispose();
            }
        }

        T[] Made(ChainedEvent[] rows)
        {
            // An opener is one thread's at a time.
            EventOpener opener = openers.TryTake(out EventOpener? free) ? free : new EventOpener(unlocked, snapshot.Epochs);
            try
            {
                return Array.ConvertAll(rows, row => make(Opened(unlocked, opener, row)));
            }
            finally
            {
                openers.Add(opener);
            }
        }
    }

    private static JournalEntry Opened(JournalUnlocked unlocked, EventOpener opener, ChainedEvent row) => new(
        row.Event.Sequence,
        opener.Open(row.Event, row.Previous) ?? throw new JournalReadException(JournalErrors.Altered(unlocked.Path, row.Event.Sequence)),
        opener.WriterOf(row.Event));
}
