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
        List<JournalEvent> all = [.. journal];
        HashSet<string> inError = [.. all.OfType<EnteredInError>().Select(e => e.Event)];
        List<ReadingRecorded> readings = [.. all.OfType<ReadingRecorded>().Where(r => !inError.Contains(r.Id))];
        HashSet<string> amended = [.. readings.Select(r => r.Amends).OfType<string>()];
        return readings.Where(r => !amended.Contains(r.Id));
    }
}
