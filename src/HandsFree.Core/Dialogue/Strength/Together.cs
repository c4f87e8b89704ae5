using System.Collections.Immutable;
using HandsFree.Core.Hearings;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Dialogue;

/// <summary>Two hearings of one value, the second in digits, decide it together.</summary>
internal static class Together
{
    /// <summary>The values that one utterance may have been: the one heard, and the next where it is of the same sign.</summary>
    public static ImmutableList<Possible<Quantity>> Of(DialogueEvent.Utterance said, Reading reading)
    {
        var best = new Possible<Quantity>(reading.Value, said.Probability);
        Quantity? next = said.RunnerUp switch
        {
            Meaning.ReadingSaid other when other.Reading.Value.Sign == reading.Value.Sign => other.Reading.Value,
            Meaning.ValueAlone other => Number(reading, other.Number),
            Meaning.Correction other => Number(reading, other.Number),
            _ => null,
        };
        return next is null || next == reading.Value || said.Margin is not { } margin
            ? [best]
            : [best, new(next, Math.Min(1 - said.Probability, said.Probability * Math.Exp(-margin)))];
    }

    /// <summary>Whether both leave it open. A value that is not the one just heard is never chosen: it would be read back to somebody
    /// who has not just said it.</summary>
    public static bool IsDoubtful(
        ImmutableList<Possible<Quantity>> first, ImmutableList<Possible<Quantity>> second, Quantity heard, ImmutableHashSet<Quantity> refused,
        DialogueSettings settings)
    {
        IReadOnlyList<Possible<Quantity>> both = TwoHearings.Together(first, second, refused.Remove(heard));
        return both.Count == 0 || both[0].Value != heard || TwoHearings.Margin(both) < settings.DoubtMargin;
    }

    private static Quantity? Number(Reading reading, SpokenNumber number) =>
        QuantityFrom.Number(reading.Value.Sign, number, QuantityFrom.UnitOf(reading.Value));
}
