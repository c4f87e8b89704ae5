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
    /// <summary>Symptoms that change what the rules say of a pulse or a pressure, and how they are asked for.</summary>
    private static readonly ImmutableDictionary<VitalSign, (string Text, ImmutableHashSet<string> Symptoms)> Symptoms =
        new Dictionary<VitalSign, (string, ImmutableHashSet<string>)>
        {
            [VitalSign.Pulse] = ("Short of breath?", ["short of breath"]),
            [VitalSign.BloodPressure] = ("Chest pain, headache, or weakness?", ["chest pain", "headache", "weakness"]),
        }.ToImmutableDictionary();

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

    /// <summary>The question whose yes would make the decision on a value that is told anyway graver; null else, and where a report as
    /// grave as a yes could make is open on the sign.</summary>
    public static (string Text, ImmutableHashSet<string> Symptoms)? SymptomQuestion(this Turn turn, Reading reading)
    {
        Outcome without = turn.Decide(reading).Outcome;
        return without != Outcome.Accept
            && Symptoms.TryGetValue(reading.Value.Sign, out var asked)
            && turn.Decide(reading, asked.Symptoms).Outcome is var with && with > without
            && !(turn.Set.Reported.TryGetValue(reading.Value.Sign, out ReportUrgency open) && open >= Reporting.UrgencyOf(with))
                ? asked
                : null;
    }
}
