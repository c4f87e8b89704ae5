using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Dialogue;

/// <summary>A bare number, where the state knows what it is a number of.</summary>
internal static class Values
{
    /// <summary>Offers the number as a value of a sign, or says that it can't be one.</summary>
    /// <param name="turn">The turn.</param>
    /// <param name="sign">Of what.</param>
    /// <param name="number">What was said.</param>
    /// <param name="how">What was said about the way it was taken; with seconds of a count the number is a count.</param>
    /// <param name="amends">The id of the reading that it will replace, or null.</param>
    /// <param name="corrects">The value that it corrects in one breath, or null.</param>
    public static Turn OfferNumber(
        this Turn turn, VitalSign sign, SpokenNumber number, Circumstances how, string? amends, Quantity? corrects = null) =>
        turn.ReadingOf(sign, number, how, corrects) is { } reading
            ? turn.Offer(reading, amends, corrects)
            : turn.AskForAnother(sign, how, $"{SignNames.Of(sign)}, {Numbers.Of(number)}", amends);

    /// <summary>The reading that a number makes, or null where it makes none.</summary>
    public static Reading? ReadingOf(this Turn turn, VitalSign sign, SpokenNumber number, Circumstances how, Quantity? like = null)
    {
        if (how.CountedSeconds is { } seconds && number.Second is null)
        {
            return Meanings.Counts.Reading(sign, number.First, seconds, how) is Meaning.ReadingSaid said ? said.Reading : null;
        }

        string? unit = like is not null ? QuantityFrom.UnitOf(like) : null;
        unit ??= sign == VitalSign.Weight ? QuantityFrom.Text(turn.Parts.Settings.WeightUnit) : null;
        return QuantityFrom.Number(sign, number, unit) is { } value ? new Reading(value, how) : null;
    }
}
