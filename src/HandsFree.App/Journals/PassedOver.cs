using HandsFree.App.Homes;
using HandsFree.Core.Journal;
using HandsFree.Store.Journaling;

namespace HandsFree.App.Journals;

/// <summary>Events that this program can't read, such as those of a newer one: they are passed over, and each is named once.</summary>
/// <param name="warn">Takes the line that names one.</param>
internal sealed class PassedOver(Action<string> warn)
{
    private readonly SortedDictionary<long, string> named = [];

    /// <summary>A line for each that was met, in the order of the journal.</summary>
    public IReadOnlyList<string> Lines => [.. named.Values];

    /// <summary>The event of an entry, or why it can't be read.</summary>
    public static (long Sequence, JournalEvent? Event, string Why) Try(JournalEntry entry)
    {
        try
        {
            return (entry.Sequence, HomeJournal.Decoded(entry), "");
        }
        catch (InvalidDataException wrong)
        {
            return (entry.Sequence, null, wrong.Message);
        }
    }

    /// <summary>How an event is named that can't be read.</summary>
    /// <param name="why">Which, and why.</param>
    public static string Line(string why) => $"{why}; it is passed over";

    /// <summary>Those that can be read.</summary>
    public IEnumerable<(long Sequence, JournalEvent Event)> Readable(IEnumerable<(long Sequence, JournalEvent? Event, string Why)> tried)
    {
        foreach ((long sequence, JournalEvent? happened, string why) in tried)
        {
            if (happened is not null)
            {
                yield return (sequence, happened);
            }
            else if (named.TryAdd(sequence, Line(why)))
            {
                warn(named[sequence]);
            }
        }
    }
}
