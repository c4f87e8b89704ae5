using System.Collections.Immutable;
using HandsFree.Core.Observations;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;

namespace HandsFree.Core.Journal.Amending;

/// <summary>Runs the rules again for a resident whose record was amended (safety 20): a decision that is now graver opens a report, and a
/// report that rests on an amended reading is annotated.</summary>
internal static class Reconsideration
{
    /// <summary>What a new value leads to among the readings that stand.</summary>
    public static Decision Decide(AmendmentContext context, Resident resident, Reading reading, DateTimeOffset measuredAt, IReadOnlySet<string> without) =>
        context.Rules.Decide(reading, DecisionContexts.New(
            context.Journal, resident, measuredAt, MostRechecks, ImmutableHashSet<string>.Empty, late: true, without: without));

    /// <summary>No recheck can be asked for any more: what would have asked for one is told.</summary>
    private const int MostRechecks = 2;

    public static ImmutableList<JournalEvent> Of(
        AmendmentContext context, ImmutableList<JournalEvent> amended, Resident resident, ReadingRecorded? was)
    {
        List<JournalEvent> all = [.. context.Journal, .. amended];
        HashSet<string> acknowledged = [.. all.OfType<ReportAcknowledged>().Select(a => a.Report)];
        HashSet<string> inError = [.. all.OfType<EnteredInError>().Select(e => e.Event)];
        List<ReportOpened> open =
            [.. all.OfType<ReportOpened>().Where(r => r.Resident == resident.Id && !acknowledged.Contains(r.Id) && !inError.Contains(r.Id))];
        // Also where a nurse knows of it or it is closed: she advised on a value that was another.
        foreach (ReportOpened report in all.OfType<ReportOpened>().Where(r => r.Resident == resident.Id && !inError.Contains(r.Id) && was is not null && r.Readings.Contains(was.Id)))
        {
            amended = amended.Add(new ReportNoted(
                context.NextId(), context.Person, context.At, resident.Id, report.Id, $"a reading that this rests on was amended: {context.Reason}"));
        }

        DateTimeOffset from = was?.Confirmed.By.MeasuredAt ?? amended.OfType<ReadingRecorded>().Min(r => r.Confirmed.By.MeasuredAt);
        foreach (ReadingRecorded reading in PastReadings.Standing(all).Where(r => r.Resident == resident.Id && r.Confirmed.By.MeasuredAt >= from))
        {
            Decision now = context.Rules.Decide(
                reading.Confirmed.Reading, DecisionContexts.Again(all, resident, reading, MostRechecks, ImmutableHashSet<string>.Empty));
            if (Urgency(now) is { } urgency && Changes(amended, reading, now) && !open.Exists(r => r.Readings.Contains(reading.Id) && r.Urgency >= urgency))
            {
                amended = amended.Add(new ReportOpened(
                    context.NextId(), context.Person, context.At, resident.Id, urgency, reading.Confirmed.Reading.Value.Sign, [reading.Id],
                    $"after an amendment: {string.Join("; ", now.Reasons.Select(r => r.Text))}", [.. now.Reasons.Select(r => r.Rule)]));
            }
        }

        return amended;
    }

    // A reading that is new here, or one of which the rules now say something graver.
    private static bool Changes(ImmutableList<JournalEvent> amended, ReadingRecorded reading, Decision now) =>
        amended.Contains(reading) || now.Outcome > reading.Decision.Outcome;

    private static ReportUrgency? Urgency(Decision decision) => decision.Outcome switch
    {
        Outcome.ReportNow => ReportUrgency.Now,
        Outcome.ReportThisShift => ReportUrgency.ThisShift,
        _ => null,
    };
}
