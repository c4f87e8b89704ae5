using HandsFree.Core.Journal;

namespace HandsFree.Exchange.Fhir.Outgoing;

/// <summary>Which entries of a record belong together: a reading with what took its place, the reports that rest on it, and what happened to
/// those. It holds ids and numbers alone, so that a record of years fits into memory.</summary>
public sealed class RecordIndex
{
    private readonly Dictionary<string, int> numbers = new(StringComparer.Ordinal);
    private readonly List<int> parents = [];
    private readonly Dictionary<int, long> last = [];

    /// <summary>Reads the whole record once.</summary>
    public RecordIndex(IEnumerable<(long Number, JournalEvent Event)> entries)
    {
        List<long> touched = [];
        foreach ((long number, JournalEvent happened) in entries)
        {
            if (Joins(happened) is { } others)
            {
                int own = Number(happened.Id);
                foreach (string other in others)
                {
                    Join(own, Number(other));
                }

                while (touched.Count < parents.Count)
                {
                    touched.Add(0);
                }

                touched[own] = number;
            }
        }

        for (int i = 0; i < touched.Count; i++)
        {
            int root = Root(i);
            last[root] = Math.Max(last.GetValueOrDefault(root), touched[i]);
        }
    }

    /// <summary>The unit of an entry, and the number of the entry that touched the unit last; null for what is not passed on.</summary>
    public (int Unit, long Last)? Of(JournalEvent happened) =>
        Joins(happened) is not null && numbers.TryGetValue(happened.Id, out int number) && Root(number) is var root ? (root, last[root]) : null;

    /// <summary>The ids that an entry belongs to; null for an entry that is not passed on.</summary>
    private IEnumerable<string>? Joins(JournalEvent happened) => happened switch
    {
        ReadingRecorded e => e.Amends is { } amended ? [amended] : [],
        NotTakenRecorded => [],
        ReadingAmended e => new[] { e.Event, e.Becomes }.OfType<string>(),
        ReportOpened e => e.Readings,
        ReportTold e => [e.Report],
        ReportAcknowledged e => [e.Report],
        ReportClosed e => [e.Report],
        ReportNoted e => [e.Report],
        PlanMade e => [e.Report],
        PlanWithdrawn e => [e.Report],
        // What was undone may be nothing that is passed on: a recheck that was asked for.
        EnteredInError e => numbers.ContainsKey(e.Event) ? [e.Event] : null,
        _ => null,
    };

    private int Number(string id)
    {
        if (!numbers.TryGetValue(id, out int number))
        {
            numbers[id] = number = parents.Count;
            parents.Add(number);
        }

        return number;
    }

    private void Join(int one, int other) => parents[Root(one)] = Root(other);

    private int Root(int number)
    {
        while (parents[number] != number)
        {
            parents[number] = parents[parents[number]];
            number = parents[number];
        }

        return number;
    }
}
