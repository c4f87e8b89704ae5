using HandsFree.App.Homes;
using HandsFree.Core.Journal;
using HandsFree.Store.Journaling;

namespace HandsFree.App.Journals;

/// <summary>How many events of each kind a journal has; reads every one of them.</summary>
internal static class JournalKinds
{
    /// <summary>Counts.</summary>
    /// <exception cref="JournalReadException">The file can't be read.</exception>
    /// <exception cref="InvalidDataException">An event can't be read, or an id stands twice; says which.</exception>
    public static IReadOnlyDictionary<string, int> Of(HomeJournal journal)
    {
        SortedDictionary<string, int> kinds = new(StringComparer.Ordinal);
        HashSet<string> ids = new(StringComparer.Ordinal);
        foreach (JournalEntry entry in journal.Entries)
        {
            JournalEvent happened = HomeJournal.Decoded(entry);
            if (!ids.Add(happened.Id))
            {
                throw new InvalidDataException($"event {entry.Sequence}: its id {happened.Id} stands in an earlier event too");
            }

            string kind = JournalLine.Kind(entry);
            kinds[kind] = kinds.GetValueOrDefault(kind) + 1;
        }

        return kinds;
    }
}
