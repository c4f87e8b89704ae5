using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Meanings;

/// <summary>A count and the rate per minute that it makes: 60 divided by the seconds, times the count (arithmetic).</summary>
internal static class Counts
{
    /// <summary>The reading that a count makes; not possible where the rate can't be represented; null where nothing of this
    /// sign is counted or the seconds are none of 15, 30 and 60.</summary>
    public static Meaning? Reading(VitalSign sign, decimal counted, decimal seconds, Circumstances how)
    {
        if (sign is not (VitalSign.Pulse or VitalSign.Respirations) || seconds is not (15 or 30 or 60))
        {
            return null;
        }

        Quantity? rate = QuantityFrom.Number(sign, new SpokenNumber(counted * 60 / seconds), null);
        return rate is null
            ? new Meaning.NotPossible(sign, new SpokenNumber(counted), $"{counted} in {seconds} seconds is no rate that can be")
            : new Meaning.ReadingSaid(new Reading(rate, how with { Counted = (int)counted, CountedSeconds = (int)seconds }));
    }
}
