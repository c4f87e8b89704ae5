using HandsFree.Core.Dialogue;
using HandsFree.Core.Hearings;
using HandsFree.Core.Meanings;
using HandsFree.Core.Quantities;
using HandsFree.Speech;

namespace HandsFree.App.Session;

/// <summary>From what an engine heard to what happens to the dialogue.</summary>
internal static class Understanding
{
    /// <summary>The event; null where there was no speech after all.</summary>
    /// <param name="hearing">What the engine heard.</param>
    /// <param name="at">When the speech began.</param>
    /// <param name="levelDecibels">Its level, dB full scale.</param>
    /// <param name="weightUnit">The home's unit for a weight that was said without one.</param>
    public static DialogueEvent? Of(Speech.Hearing hearing, DateTimeOffset at, double levelDecibels, WeightUnit weightUnit) =>
        hearing.Outcome switch
        {
            HearingOutcome.Nothing => null,
            HearingOutcome.NoReading => new DialogueEvent.NotAReading(at),
            HearingOutcome.Partial => new DialogueEvent.PartOfAReading(at),
            HearingOutcome.Heard => Utterance(hearing, at, levelDecibels, weightUnit),
            _ => throw new ArgumentOutOfRangeException(nameof(hearing), hearing.Outcome, "no such outcome"),
        };

    private static DialogueEvent Utterance(Speech.Hearing hearing, DateTimeOffset at, double levelDecibels, WeightUnit weightUnit)
    {
        Candidate best = hearing.Best ?? throw new ArgumentException("heard, and no value", nameof(hearing));
        if (MeaningMap.From(best.Meaning, weightUnit) is not { } meaning)
        {
            return new DialogueEvent.NotAReading(at);
        }

        return new DialogueEvent.Utterance(at, meaning, best.Words)
        {
            Probability = best.Probability,
            Margin = double.IsPositiveInfinity(hearing.Margin) ? null : hearing.Margin,
            Alternatives = Alternatives(hearing, weightUnit),
            RunnerUp = hearing.RunnerUp is { } next ? MeaningMap.From(next.Meaning, weightUnit) : null,
            RunnerUpWords = hearing.RunnerUp?.Words,
            LevelDecibels = levelDecibels,
        };
    }

    /// <summary>Each meaning once: two candidates may mean the same, "yes" said in two ways.</summary>
    private static IReadOnlyList<Possible<Meaning>> Alternatives(Speech.Hearing hearing, WeightUnit weightUnit) =>
        [.. hearing.Candidates
            .Select(c => (Meaning: MeaningMap.From(c.Meaning, weightUnit), c.Probability))
            .Where(c => c.Meaning is not null)
            .GroupBy(c => c.Meaning!)
            .Select(g => new Possible<Meaning>(g.Key, Math.Min(1, g.Sum(c => c.Probability))))
            .OrderByDescending(p => p.Probability)];
}
