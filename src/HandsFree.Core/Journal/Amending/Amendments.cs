using System.Collections.Immutable;
using HandsFree.Core.Observations;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;

namespace HandsFree.Core.Journal.Amending;

/// <summary>The events of an amendment, and of what the rules say afterwards of everybody whom it touches. Nothing is overwritten: the
/// amended reading stays, and says by another event that it counts no more.</summary>
public static class Amendments
{
    /// <summary>A reading should never have been.</summary>
    public static IReadOnlyList<JournalEvent> EnteredInError(AmendmentContext context, ReadingRecorded reading)
    {
        var gone = new EnteredInError(context.NextId(), context.Person, context.At, reading.Resident, reading.Id, context.Reason);
        return Reconsidered(context, [gone, Note(context, reading.Resident, AmendmentKind.EnteredInError, reading, null, null)], [reading.Resident], reading);
    }

    /// <summary>Another value takes the place of a reading, measured when that one was.</summary>
    /// <param name="context">Who, when, why, and the rules.</param>
    /// <param name="reading">The reading that is corrected.</param>
    /// <param name="value">The right one, read back and confirmed.</param>
    public static IReadOnlyList<JournalEvent> Corrected(AmendmentContext context, ReadingRecorded reading, ReadBack value)
    {
        Attribution by = new(reading.Confirmed.By.Person, reading.Confirmed.By.MeasuredAt, context.At, reading.Confirmed.By.Late);
        ReadingRecorded right = Recorded(context, reading.Resident, value, by, [reading], reading.Id, reading.IsRecheck);
        return Reconsidered(
            context, [right, Note(context, reading.Resident, AmendmentKind.CorrectedValue, reading, right, null)], [reading.Resident], reading);
    }

    /// <summary>A value measured earlier is entered now, and marked as a late entry.</summary>
    /// <param name="context">Who, when, why, and the rules.</param>
    /// <param name="resident">The resident's id.</param>
    /// <param name="value">The value, read back and confirmed.</param>
    /// <param name="measuredAt">When it was measured.</param>
    /// <param name="measuredBy">The id of who measured it.</param>
    public static IReadOnlyList<JournalEvent> Late(
        AmendmentContext context, string resident, ReadBack value, DateTimeOffset measuredAt, string measuredBy)
    {
        ReadingRecorded late = Recorded(context, resident, value, new(measuredBy, measuredAt, context.At, Late: true), [], null, isRecheck: false);
        return Reconsidered(context, [late, Note(context, resident, AmendmentKind.LateEntry, null, late, null)], [resident], null);
    }

    /// <summary>A reading belongs to another resident: it counts no more where it is and stands there, both ends marked.</summary>
    /// <param name="context">Who, when, why, and the rules.</param>
    /// <param name="reading">The reading.</param>
    /// <param name="to">The id of the resident whose it is.</param>
    public static IReadOnlyList<JournalEvent> Moved(AmendmentContext context, ReadingRecorded reading, string to)
    {
        var gone = new EnteredInError(
            context.NextId(), context.Person, context.At, reading.Resident, reading.Id, $"wrong resident, moved to {to}: {context.Reason}");
        Attribution by = reading.Confirmed.By with { EnteredAt = context.At };
        ReadingRecorded there = Recorded(context, to, reading.Confirmed.ReadBack, by, [reading], null, isRecheck: false);
        return Reconsidered(
            context, [gone, there, Note(context, reading.Resident, AmendmentKind.WrongResident, reading, there, to)], [reading.Resident, to], reading);
    }

    private static ReadingAmended Note(
        AmendmentContext context, string resident, AmendmentKind kind, ReadingRecorded? was, ReadingRecorded? becomes, string? movedTo) =>
        new(context.NextId(), context.Person, context.At, resident, kind, was?.Id, becomes?.Id, movedTo, context.Reason);

    private static ReadingRecorded Recorded(
        AmendmentContext context, string resident, ReadBack value, Attribution by, IReadOnlyList<ReadingRecorded> without, string? amends, bool isRecheck)
    {
        Heard yes = new("yes", 1, null, null, null, Typed: true, context.At);
        Decision decision = Reconsideration.Decide(
            context, Resident(context, resident), value.Reading, by.MeasuredAt, without.Select(r => r.Id).ToImmutableHashSet());
        return new ReadingRecorded(context.NextId(), context.Person, context.At, resident, value.ByYes(yes, by), decision, isRecheck, amends);
    }

    private static IReadOnlyList<JournalEvent> Reconsidered(
        AmendmentContext context, ImmutableList<JournalEvent> events, IReadOnlyList<string> residents, ReadingRecorded? was) =>
        residents.Aggregate(events, (all, resident) => Reconsideration.Of(context, all, Resident(context, resident), was));

    private static Resident Resident(AmendmentContext context, string id) =>
        context.Roster.ById(id) ?? throw new ArgumentException($"no resident with the id {id} is on the roster", nameof(id));
}
