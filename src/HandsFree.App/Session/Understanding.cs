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
            HearingOutcome.Heard or HearingOutcome.Doubtful => Utterance(hearing, at, levelDecibels, weightUnit),
            _ => throw new ArgumentOutOfRangeException(nameof(hearing), hearing.Outcome, "no such outcome"),
        };

    private static DialogueEvent Utterance(Speech.Hearing hearing, DateTimeOffset at, double levelDecibels, WeightUnit weightUnit)
    {
        if (MeaningMap.From((hearing.Best ?? throw new ArgumentException("heard, and no value", nameof(hearing))).Meaning, weightUnit) is null)
        {
            return new DialogueEvent.NotAReading(at);
        }

        Understood[] meanings = Meanings(hearing, weightUnit);
        Understood best = meanings[0];
        Understood? next = meanings.Length > 1 ? meanings[1] : null;
        double close = Math.Max(next?.Probability ?? 0, hearing.Unfound);
        return new DialogueEvent.Utterance(at, best.Meaning, best.Words)
        {
            Probability = best.Probability,
            Margin = close > 0 ? Math.Max(0, Math.Log(best.Probability / close)) : null,
            Alternatives = [.. meanings.Select(m => new Possible<Meaning>(m.Meaning, m.Probability))],
            Doubtful = hearing.Outcome == HearingOutcome.Doubtful,
            Unfound = hearing.Unfound,
            RunnerUp = next?.Meaning,
            RunnerUpWords = next?.Words,
            LevelDecibels = levelDecibels,
        };
    }

    /// <summary>Each meaning once, likeliest first: two candidates may mean the same ("repeat" and "read back").</summary>
    private static Understood[] Meanings(Speech.Hearing hearing, WeightUnit weightUnit) =>
        [.. hearing.Candidates
            .Select(c => (Meaning: MeaningMap.From(c.Meaning, weightUnit), Candidate: c))
            .Where(c => c.Meaning is not null)
            .GroupBy(c => c.Meaning!, c => c.Candidate)
            .Select(g => new Understood(g.Key, g.First().Words, Math.Min(1, g.Sum(c => c.Probability))))
            .OrderByDescending(m => m.Probability)];

    /// <summary>A meaning with its likeliest words.</summary>
    private sealed record Understood(Meaning Meaning, string Words, double Probability);
}
