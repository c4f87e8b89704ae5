using System.Collections.Immutable;
using HandsFree.Core.Hearings;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Dialogue;

/// <summary>All hearings of one value decide it together; the same sound counts once.</summary>
internal static class Together
{
    /// <summary>The values that one utterance may have been: the one heard, and all others that are values of the same sign, each once. Where
    /// the engine gave no alternatives, the next by its margin.</summary>
    public static ImmutableList<Possible<Quantity>> Of(DialogueEvent.Utterance said, Reading reading)
    {
        IEnumerable<Possible<Quantity>> others = (said.Alternatives.Count > 0 ? said.Alternatives : Next(said))
            .Where(p => p.Value != said.Meaning)
            .Select(p => (Value: Value(p.Value, reading), p.Probability))
            .Where(p => p.Value is not null && p.Value != reading.Value)
            .GroupBy(p => p.Value!)
            .Select(g => new Possible<Quantity>(g.Key, g.Sum(p => p.Probability)));
        double left = Math.Max(0, 1 - said.Probability);
        return [new(reading.Value, said.Probability), .. others.Select(p => p with { Probability = Math.Min(left, p.Probability) })];
    }

    /// <summary>The hearings with one more; none for what was typed, of which there is no doubt.</summary>
    public static ImmutableList<HeardValue> And(this ImmutableList<HeardValue> hearings, DialogueEvent.Utterance said, Reading reading) =>
        said.Typed ? [] : hearings.Add(new HeardValue(NumberSound.Of(said.Words), Of(said, reading)));

    /// <summary>Whether all of them leave it open. A value that is not the one just heard is never chosen: it would be read back to somebody
    /// who has not just said it.</summary>
    public static bool IsDoubtful(
        ImmutableList<HeardValue> hearings, Quantity heard, ImmutableHashSet<Quantity> refused, DialogueSettings settings)
    {
        IReadOnlyList<Possible<Quantity>> all = hearings
            .GroupBy(h => h.Sound)
            .Select(g => (IReadOnlyList<Possible<Quantity>>)g.MaxBy(h => h.Possible[0].Probability)!.Possible)
            .Aggregate((first, next) => TwoHearings.Together(first, next, refused.Remove(heard)));
        return all.Count == 0 || all[0].Value != heard || TwoHearings.Margin(all) < settings.DoubtMargin;
    }

    private static Possible<Meaning>[] Next(DialogueEvent.Utterance said) => said is { RunnerUp: { } next, Margin: { } margin }
        ? [new(next, said.Probability * Math.Exp(-margin))]
        : [];

    private static Quantity? Value(Meaning meaning, Reading reading) => meaning switch
    {
        Meaning.ReadingSaid other when other.Reading.Value.Sign == reading.Value.Sign => other.Reading.Value,
        Meaning.ValueAlone other => Number(reading, other.Number),
        Meaning.Correction other => Number(reading, other.Number),
        _ => null,
    };

    private static Quantity? Number(Reading reading, SpokenNumber number) =>
        QuantityFrom.Number(reading.Value.Sign, number, QuantityFrom.UnitOf(reading.Value));
}
