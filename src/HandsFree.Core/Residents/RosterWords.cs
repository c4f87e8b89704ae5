using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Residents;

/// <summary>The words of rosters and of the home's files, and what they stand for.</summary>
public static class RosterWords
{
    /// <summary>The vital signs.</summary>
    public static IReadOnlyDictionary<string, VitalSign> Signs { get; } = new Dictionary<string, VitalSign>
    {
        ["temperature"] = VitalSign.Temperature,
        ["pulse"] = VitalSign.Pulse,
        ["respirations"] = VitalSign.Respirations,
        ["blood pressure"] = VitalSign.BloodPressure,
        ["oxygen saturation"] = VitalSign.OxygenSaturation,
        ["weight"] = VitalSign.Weight,
        ["pain"] = VitalSign.Pain,
    };

    /// <summary>The numbers that a limit or a usual value can stand on.</summary>
    public static IReadOnlyDictionary<string, LimitedValue> Values { get; } = new Dictionary<string, LimitedValue>
    {
        ["temperature"] = LimitedValue.TemperatureFahrenheit,
        ["pulse"] = LimitedValue.Pulse,
        ["respirations"] = LimitedValue.Respirations,
        ["systolic"] = LimitedValue.Systolic,
        ["diastolic"] = LimitedValue.Diastolic,
        ["oxygen saturation"] = LimitedValue.OxygenSaturation,
        ["weight"] = LimitedValue.WeightPounds,
        ["pain"] = LimitedValue.Pain,
    };

    /// <summary>The sites of a temperature.</summary>
    public static IReadOnlyDictionary<string, TemperatureSite> Sites { get; } = new Dictionary<string, TemperatureSite>
    {
        ["mouth"] = TemperatureSite.Mouth,
        ["armpit"] = TemperatureSite.Armpit,
        ["ear"] = TemperatureSite.Ear,
        ["forehead"] = TemperatureSite.Forehead,
        ["rectum"] = TemperatureSite.Rectum,
    };

    /// <summary>How often something is due.</summary>
    public static IReadOnlyDictionary<string, Frequency> Frequencies { get; } = new Dictionary<string, Frequency>
    {
        ["every shift"] = Frequency.EveryShift,
        ["daily"] = Frequency.Daily,
        ["weekly"] = Frequency.Weekly,
        ["monthly"] = Frequency.Monthly,
    };

    /// <summary>The days of the week.</summary>
    public static IReadOnlyDictionary<string, DayOfWeek> Weekdays { get; } = Enum.GetValues<DayOfWeek>().ToDictionary(d => d.ToString().ToLowerInvariant());

    /// <summary>The word of a value.</summary>
    /// <param name="words">One of the dictionaries here.</param>
    /// <param name="value">What it stands for.</param>
    public static string Of<T>(IReadOnlyDictionary<string, T> words, T value) => words.First(w => Equals(w.Value, value)).Key;
}
