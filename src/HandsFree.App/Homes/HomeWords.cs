using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;

namespace HandsFree.App.Homes;

/// <summary>The words of the home's files and what they stand for.</summary>
internal static class HomeWords
{
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

    public static IReadOnlyDictionary<string, TemperatureSite> Sites { get; } = new Dictionary<string, TemperatureSite>
    {
        ["mouth"] = TemperatureSite.Mouth,
        ["armpit"] = TemperatureSite.Armpit,
        ["ear"] = TemperatureSite.Ear,
        ["forehead"] = TemperatureSite.Forehead,
        ["rectum"] = TemperatureSite.Rectum,
    };
}
