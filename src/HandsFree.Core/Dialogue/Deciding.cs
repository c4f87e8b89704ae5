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

    /// <summary>What is known when a reading is decided.</summary>
    public static DecisionContext Context(this Turn turn, Reading reading, IReadOnlySet<string>? symptoms = null)
    {
        ResidentSet set = turn.Set;
        IReadOnlyList<PastReading> earlier = PastReadings.Of(turn.State.Journal, set.Resident.Id);
        return new DecisionContext(
            set.Resident.WithPlans(turn.State.Journal, turn.At), earlier, set.RechecksDone(reading.Value.Sign), turn.At, symptoms ?? ImmutableHashSet<string>.Empty);
    }
}
