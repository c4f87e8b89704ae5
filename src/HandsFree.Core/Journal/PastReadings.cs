using HandsFree.Core.Observations;

namespace HandsFree.Core.Journal;

/// <summary>The readings of one resident that stand: neither in error nor replaced by an amendment.</summary>
public static class PastReadings
{
    /// <summary>Oldest measurement first. What a report rests on, and what was measured while one was open (until a nurse acknowledged
    /// it), does not count as usual.</summary>
    public static IReadOnlyList<PastReading> Of(IEnumerable<JournalEvent> journal, string resident)
    {
        List<JournalEvent> all = [.. journal];
        Func<ReadingRecorded, bool> isUsual = Usual(all, resident);
        return [.. Standing(all).Where(r => r.Resident == resident)
            .Select(r => new PastReading(r.Confirmed.Reading, r.Confirmed.By.MeasuredAt) { CountsAsUsual = isUsual(r) })
            .Concat(Imported(all, resident))
            .OrderBy(p => p.MeasuredAt)];
    }

    /// <summary>The readings of a resident that another system recorded, in journal order.</summary>
    public static IEnumerable<PastReading> Imported(IReadOnlyList<JournalEvent> all, string resident)
    {
        HashSet<string> inError = InError(all);
        return all.OfType<ReadingImported>().Where(r => r.Resident == resident && !inError.Contains(r.Id)).Select(r => new PastReading(r.Reading, r.MeasuredAt));
    }

    /// <summary>Whether a reading of a resident may count as usual.</summary>
    internal static Func<ReadingRecorded, bool> Usual(IReadOnlyList<JournalEvent> all, string resident)
    {
        HashSet<string> inError = InError(all);
        List<ReportOpened> reports = [.. all.OfType<ReportOpened>().Where(r => r.Resident == resident && !inError.Contains(r.Id))];
        Dictionary<string, DateTimeOffset> closed = all.OfType<ReportAcknowledged>().GroupBy(a => a.Report).ToDictionary(g => g.Key, g => g.Min(a => a.At));
        return reading => !reports.Exists(r =>
            r.Readings.Contains(reading.Id)
            || (reading.Confirmed.By.MeasuredAt >= r.At && (!closed.TryGetValue(r.Id, out DateTimeOffset end) || reading.Confirmed.By.MeasuredAt < end)));
    }

    /// <summary>All readings that stand, in journal order.</summary>
    public static IEnumerable<ReadingRecorded> Standing(IEnumerable<JournalEvent> journal)
    {
        List<JournalEvent> all = [.. journal];
        HashSet<string> inError = InError(all);
        List<ReadingRecorded> readings = [.. all.OfType<ReadingRecorded>().Where(r => !inError.Contains(r.Id))];
        HashSet<string> amended = [.. readings.Select(r => r.Amends).OfType<string>()];
        return readings.Where(r => !amended.Contains(r.Id));
    }

    private static HashSet<string> InError(IEnumerable<JournalEvent> all) => [.. all.OfType<EnteredInError>().Select(e => e.Event)];
}
