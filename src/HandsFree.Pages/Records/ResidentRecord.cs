using HandsFree.Core.Journal;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Reports.Sheets;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Core.Rules.Limits;

namespace HandsFree.Pages.Records;

/// <summary>What the record holds of one resident's readings.</summary>
/// <param name="Resident">Who.</param>
/// <param name="Signs">The history of each sign, also of one that was never taken.</param>
public sealed record ResidentRecord(Resident Resident, IReadOnlyDictionary<VitalSign, SignHistory> Signs)
{
    /// <summary>The records of all residents.</summary>
    /// <param name="journal">All events that matter, oldest first.</param>
    /// <param name="residents">The residents; events of others are left out.</param>
    /// <param name="rules">Say the limits.</param>
    /// <param name="at">Now.</param>
    public static IReadOnlyDictionary<string, ResidentRecord> Of(
        IReadOnlyList<JournalEvent> journal, IEnumerable<Resident> residents, Rulebook rules, DateTimeOffset at)
    {
        ILookup<string?, JournalEvent> events = journal.ToLookup(e => e.ResidentId());
        return residents.ToDictionary(r => r.Id, r => Of([.. events[r.Id], .. events[null]], r, rules, at));
    }

    private static ResidentRecord Of(IReadOnlyList<JournalEvent> journal, Resident resident, Rulebook rules, DateTimeOffset at)
    {
        DecisionContext context = DecisionContexts.New(journal, resident, at, 0, new HashSet<string>());
        ILookup<VitalSign, ChartedReading> charted = Charted(journal).OrderBy(r => r.At).ToLookup(r => r.Reading.Value.Sign);
        return new(resident, Enum.GetValues<VitalSign>().ToDictionary(sign => sign, sign => History(sign, [.. charted[sign]], rules, context)));
    }

    private static SignHistory History(VitalSign sign, IReadOnlyList<ChartedReading> readings, Rulebook rules, DecisionContext context)
    {
        Dictionary<LimitedValue, UsualRange> usual = [];
        Dictionary<LimitedValue, ReportLimits> limits = [];
        Reading? like = readings.LastOrDefault(r => r.Stands)?.Reading;
        foreach (LimitedValue value in WrittenReading.ValuesOf(sign))
        {
            if (like is not null && UsualRange.Of(value, like, context) is { } range)
            {
                usual[value] = range;
            }

            limits[value] = rules.LimitsOf(value, context, usual.GetValueOrDefault(value)?.Median);
        }

        return new(sign, readings, limits, usual);
    }

    private static IEnumerable<ChartedReading> Charted(IReadOnlyList<JournalEvent> journal)
    {
        Dictionary<string, EnteredInError> errors = journal.OfType<EnteredInError>().DistinctBy(e => e.Event).ToDictionary(e => e.Event);
        Dictionary<string, ReadingRecorded> replaced =
            journal.OfType<ReadingRecorded>().Where(r => r.Amends is not null && !errors.ContainsKey(r.Id)).DistinctBy(r => r.Amends).ToDictionary(r => r.Amends!);
        Dictionary<string, ReadingRecorded> all = journal.OfType<ReadingRecorded>().DistinctBy(r => r.Id).ToDictionary(r => r.Id);
        Dictionary<string, ReadingAmended> reasons =
            journal.OfType<ReadingAmended>().Where(a => a.Event is not null).DistinctBy(a => a.Event).ToDictionary(a => a.Event!);
        foreach (ReadingRecorded reading in all.Values)
        {
            string? because = reasons.TryGetValue(reading.Id, out ReadingAmended? amended) ? $", {amended.Reason}" : null;
            string? amendment = errors.TryGetValue(reading.Id, out EnteredInError? error) ? $"entered in error{because ?? $", {error.Reason}"}"
                : replaced.TryGetValue(reading.Id, out ReadingRecorded? right) ? AmendedTo(reading, right, because)
                : null;
            ReadingRecorded? was = reading.Amends is { } id ? all.GetValueOrDefault(id) : null;
            yield return new(reading.Id, reading.Confirmed.Reading, reading.Confirmed.By.MeasuredAt, reading, amendment, error is null ? replaced.GetValueOrDefault(reading.Id)?.Id : null, was);
        }

        foreach (ReadingImported reading in journal.OfType<ReadingImported>().DistinctBy(r => r.Id))
        {
            string? amendment = errors.TryGetValue(reading.Id, out EnteredInError? error) ? $"entered in error, {error.Reason}" : null;
            yield return new(reading.Id, reading.Reading, reading.MeasuredAt, null, amendment, null, null);
        }
    }

    private static string AmendedTo(ReadingRecorded was, ReadingRecorded right, string? because) =>
        was.Confirmed.Reading.Value == right.Confirmed.Reading.Value
            ? $"more was said about it{because}"
            : $"corrected to {Texts.Written.Value(right.Confirmed.Reading.Value)}{because}";
}
