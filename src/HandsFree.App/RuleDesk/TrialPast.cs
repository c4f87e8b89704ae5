using HandsFree.App.Files;
using HandsFree.App.Homes;
using HandsFree.App.Unlocking;
using HandsFree.Core.Files;
using HandsFree.Core.Journal;
using HandsFree.Core.Observations;
using HandsFree.Core.Rules.Trials;
using HandsFree.Exchange.Readings;

namespace HandsFree.App.RuleDesk;

/// <summary>Past readings for a trial: from a table, or from a journal.</summary>
internal static class TrialPast
{
    private static readonly HashSet<string> NoSymptoms = [];

    /// <summary>The readings of a table, or what is wrong, a line for each error.</summary>
    public static (IReadOnlyList<TrialReading> Past, IReadOnlyList<string> Errors) OfTable(string path, HomeSettings settings)
    {
        (byte[]? content, string? unreadable) = BoundedFile.Read(path);
        if (content is null)
        {
            return ([], [unreadable!]);
        }

        (IReadOnlyList<PastSet> sets, IReadOnlyList<FileError> errors) = ReadingCsv.Read(path, content, settings.WeightUnit, settings.TimeZone);
        return (
            [.. sets.OrderBy(s => s.At).SelectMany(s => s.Readings.Select(r => new TrialReading(s.Resident, new PastReading(r, s.At), s.Symptoms)))],
            [.. errors.Select(e => e.ToString())]);
    }

    /// <summary>The readings that stand in the journal of a home. Symptoms are not kept with readings.</summary>
    public static (IReadOnlyList<TrialReading> Past, IReadOnlyList<string> Errors) OfJournal(HomeFolder folder, Unlocker unlocker)
    {
        (IReadOnlyList<JournalEvent>? journal, string? error) = JournalContent.Read(folder, unlocker, "rules trial", whole: true);
        if (journal is null)
        {
            return ([], [error!]);
        }

        ILookup<string?, JournalEvent> events = journal.ToLookup(e => e.ResidentId());
        List<ReportAcknowledged> acknowledged = [.. journal.OfType<ReportAcknowledged>()];
        return (
        [
            .. journal.OfType<ReadingRecorded>().Select(r => r.Resident).Distinct()
                .SelectMany(resident => PastReadings.Of([.. events[resident], .. acknowledged], resident).Select(past => new TrialReading(resident, past, NoSymptoms)))
                .OrderBy(r => r.Past.MeasuredAt),
        ], []);
    }
}
