using System.Collections.Immutable;
using HandsFree.Core.Journal;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Rules;

namespace HandsFree.Core.Dialogue;

/// <summary>Asks the rules about a reading of the resident in hand.</summary>
internal static class Deciding
{
    public static Decision Decide(this Turn turn, Reading reading, IReadOnlySet<string>? symptoms = null) =>
        turn.Parts.Rules.Decide(reading, turn.Context(reading, symptoms));

    /// <summary>The decision on a value that was confirmed, as of when it was measured and as if the one that it replaces had not been.</summary>
    public static Decision Decide(this Turn turn, Confirmed confirmed, IReadOnlySet<string> symptoms, string? amends) =>
        turn.Parts.Rules.Decide(confirmed.Reading, turn.Context(confirmed.Reading, symptoms, confirmed.By.MeasuredAt, amends));

    /// <summary>What is known when a reading is decided.</summary>
    /// <param name="turn">The turn.</param>
    /// <param name="reading">The reading.</param>
    /// <param name="symptoms">Symptoms that were said.</param>
    /// <param name="measuredAt">When it was measured, where that is known already; else now, or for a late entry when the aide stopped.</param>
    /// <param name="amends">The id of the reading that it replaces, or null.</param>
    public static DecisionContext Context(
        this Turn turn, Reading reading, IReadOnlySet<string>? symptoms = null, DateTimeOffset? measuredAt = null, string? amends = null)
    {
        ResidentSet set = turn.Set;
        return DecisionContexts.New(
            turn.State.Journal,
            set.Resident,
            measuredAt ?? (set.Late ? set.StoppedAt : null) ?? turn.At,
            set.RechecksDone(reading.Value.Sign),
            symptoms ?? ImmutableHashSet<string>.Empty,
            late: set.Late,
            without: amends is null ? null : ImmutableHashSet.Create(amends));
    }
}
