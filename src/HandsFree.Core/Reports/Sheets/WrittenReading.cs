using System.Globalization;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Reports.Sheets;

/// <summary>Readings in figures with their units, for paper and screen.</summary>
public static class WrittenReading
{
    /// <summary>"pulse 136 /min, counted 68 in 30 seconds, uneven".</summary>
    public static string Of(Reading reading)
    {
        string count = reading.How is { Counted: { } counted, CountedSeconds: { } seconds } ? $"counted {counted} in {seconds} seconds" : "";
        string guess = reading.How.SaidAsGuessFirst ? "said as a guess first" : "";
        return string.Join(", ", new[] { $"{SignNames.Of(reading.Value.Sign)} {Value(reading.Value)}", count, guess }
            .Concat(ReadBackTexts.Circumstances(reading.How)).Where(part => part.Length > 0));
    }

    /// <summary>"136 /min", "118/76 mmHg", "98.6 °F".</summary>
    public static string Value(Quantity value) => value switch
    {
        HeartRate v => $"{Figure(v.PerMinute)} /min",
        RespiratoryRate v => $"{Figure(v.PerMinute)} /min",
        OxygenSaturation v => $"{Figure(v.Percent)} %",
        PainScore v => $"{Figure(v.OfTen)} of 10",
        BloodPressure v => $"{Figure(v.Systolic)}/{Figure(v.Diastolic)} mmHg",
        BodyTemperature v => $"{Figure(v.Degrees)} {(v.Unit == TemperatureUnit.Fahrenheit ? "°F" : "°C")}",
        BodyWeight v => $"{Figure(v.Value)} {(v.Unit == WeightUnit.Pounds ? "lb" : "kg")}",
        _ => throw new ArgumentOutOfRangeException(nameof(value), value, "no such quantity"),
    };

    /// <summary>The numbers of a sign on which a limit or a usual value can stand.</summary>
    public static IReadOnlyList<LimitedValue> ValuesOf(VitalSign sign) => sign switch
    {
        VitalSign.Temperature => [LimitedValue.TemperatureFahrenheit],
        VitalSign.Pulse => [LimitedValue.Pulse],
        VitalSign.Respirations => [LimitedValue.Respirations],
        VitalSign.BloodPressure => [LimitedValue.Systolic, LimitedValue.Diastolic],
        VitalSign.OxygenSaturation => [LimitedValue.OxygenSaturation],
        VitalSign.Weight => [LimitedValue.WeightPounds],
        VitalSign.Pain => [LimitedValue.Pain],
        _ => throw new ArgumentOutOfRangeException(nameof(sign), sign, "no such vital sign"),
    };

    /// <summary>"usual pulse 72".</summary>
    public static string Usual(UsualValue usual) => $"usual {PlanTexts.Name(usual.Value)} {Figure(usual.Median)}";

    /// <summary>"room air", "oxygen, 2 litres a minute", "oxygen".</summary>
    public static string Oxygen(OxygenSupply supply) => supply switch
    {
        { IsRoomAir: true } => "room air",
        { LitresPerMinute: { } litres } => $"oxygen, {Figure(litres)} litres a minute",
        _ => "oxygen",
    };

    private static string Figure(decimal number) => number.ToString("0.#", CultureInfo.InvariantCulture);
}
