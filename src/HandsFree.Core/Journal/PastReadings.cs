using HandsFree.Core.Observations;

namespace HandsFree.Core.Journal;

/// <summary>The readings of one resident that stand: neither in error nor replaced by an amendment.</summary>
public static class PastReadings
{
    /// <summary>Oldest measurement first.</summary>
    public static IReadOnlyList<PastReading> Of(IEnumerable<JournalEvent> journal, string resident) =>
        [.. Standing(journal).Where(r => r.Resident == resident).Select(r => new PastReading(r.Confirmed.Reading, r.Confirmed.By.MeasuredAt))
            .OrderBy(p => p.MeasuredAt)];

    /// <summary>All readings that stand, in journal order.</summary>
    public static IEnumerable<ReadingRecorded> Standing(IEnumerable<JournalEvent> journal)
    {
        var readings = new List<ReadingRecorded>();
        var gone = new HashSet<string>();
        foreach (JournalEvent entry in journal)
        {
            switch (entry)
            {
                case ReadingRecorded reading:
                    readings.Add(reading);
                    if (reading.Amends is { } amended)
                    {
                        gone.Add(amended);
                    }

                    break;
                case EnteredInError error:
                    gone.Add(error.Event);
                    break;
            }
        }

        return readings.Where(r => !gone.Contains(r.Id));
    }
}
