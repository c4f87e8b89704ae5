using System.Globalization;
using HandsFree.App.Homes;
using HandsFree.Core.Journal;
using HandsFree.Store.Journaling;

namespace HandsFree.App.Journals;

/// <summary>Writes what a command does, in the name of who unlocked the journal.</summary>
internal sealed class JournalDesk(HomeJournal journal, TimeProvider time)
{
    private int written;

    /// <summary>Makes an event of an id and the moment, and appends it.</summary>
    /// <exception cref="JournalWriteException">Nothing was appended.</exception>
    public long Write(Func<string, DateTimeOffset, JournalEvent> make) => journal.Events.Append(make(NextId(), time.GetUtcNow()));

    /// <summary>A look at the record, written where it is known who looks.</summary>
    /// <exception cref="JournalWriteException">Nothing was appended.</exception>
    public void Viewed(string what)
    {
        if (journal.Holder is { } holder)
        {
            Write((id, at) => new RecordViewed(id, holder.Person, at, what));
        }
    }

    /// <summary>An id that no other event has: this process, this moment, a number.</summary>
    public string NextId() => string.Create(
        CultureInfo.InvariantCulture, $"desk-{time.GetUtcNow():yyyyMMddHHmmssfff}-{Environment.ProcessId}-{++written}");
}
