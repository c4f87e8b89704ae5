using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Rules.Scores;

/// <summary>What a set of readings gives to <see cref="News2"/>, for adults. Consciousness is no reading and has to be asked.</summary>
public static class News2Set
{
    /// <summary>The chart and what it is for, to be said beside a score.</summary>
    public const string Source =
        "Royal College of Physicians, London, National Early Warning Score 2, December 2017, chart 1; for adults with acute illness, information only, never instead of the rules";

    /// <summary>The youngest for whom the score was made is 16 (Royal College of Physicians, 2017: patients aged 16 or over; the reader's
    /// summary says over 16).</summary>
    private const int Youngest = 16;

    /// <summary>The parameters that the set has; the last reading of each sign counts. Scale 2 only with an ordered range of 88 to 92 %.</summary>
    /// <param name="set">Readings taken together, oldest first.</param>
    /// <param name="resident">Whose they are.</param>
    /// <param name="alert">Alert; false for new confusion, voice, pain or unresponsive; null where it was not asked.</param>
    /// <param name="day">The day of the set.</param>
    /// <returns>Null for who is not an adult.</returns>
    public static News2Parameters? Parameters(IReadOnlyList<Reading> set, Resident resident, bool? alert, DateOnly day)
    {
        if (resident.Born.AddYears(Youngest) > day)
        {
            return null;
        }

        Reading? saturation = set.LastOrDefault(r => r.Value is OxygenSaturation);
        return new(
            Value<RespiratoryRate>(set)?.PerMinute,
            Value<OxygenSaturation>(set)?.Percent,
            saturation is null ? null : !(saturation.How.Oxygen ?? resident.UsualOxygen ?? OxygenSupply.RoomAir).IsRoomAir,
            Value<BloodPressure>(set)?.Systolic,
            Value<HeartRate>(set)?.PerMinute,
            alert,
            Value<BodyTemperature>(set) is { } temperature ? (temperature.Fahrenheit - 32) * 5 / 9 : null,
            resident.OrderedLimits.Any(o => o is { Value: LimitedValue.OxygenSaturation, Least: 88, Greatest: 92 }));
    }

    /// <summary>What is missing for a total, in words; empty where there is one.</summary>
    public static IReadOnlyList<string> Missing(News2Parameters parameters) =>
    [
        .. new (bool Missing, string Name)[]
        {
            (parameters.Respirations is null, "respirations"),
            (parameters.OxygenSaturation is null, "oxygen saturation"),
            (parameters.Systolic is null, "blood pressure"),
            (parameters.Pulse is null, "pulse"),
            (parameters.Alert is null, "consciousness"),
            (parameters.Celsius is null, "temperature"),
        }.Where(p => p.Missing).Select(p => p.Name),
    ];

    private static T? Value<T>(IReadOnlyList<Reading> set)
        where T : Quantity => set.Select(r => r.Value).OfType<T>().LastOrDefault();
}
