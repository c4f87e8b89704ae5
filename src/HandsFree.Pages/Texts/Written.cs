using System.Globalization;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;

namespace HandsFree.Pages.Texts;

/// <summary>Values and what was said about them, as they are written.</summary>
public static class Written
{
    /// <summary>Number and unit: "98.6 °F", "120/80 mmHg".</summary>
    public static string Value(Quantity value) => $"{Number(value)} {Unit(value)}";

    /// <summary>The number alone: "98.6", "120/80".</summary>
    public static string Number(Quantity value) => value switch
    {
        HeartRate v => Number(v.PerMinute),
        RespiratoryRate v => Number(v.PerMinute),
        OxygenSaturation v => Number(v.Percent),
        PainScore v => Number(v.OfTen),
        BloodPressure v => $"{Number(v.Systolic)}/{Number(v.Diastolic)}",
        BodyTemperature v => v.Degrees.ToString("0.0", CultureInfo.InvariantCulture),
        BodyWeight v => v.Value.ToString("0.0", CultureInfo.InvariantCulture),
        _ => throw new ArgumentOutOfRangeException(nameof(value), value, "no such quantity"),
    };

    /// <summary>A number with at most one decimal.</summary>
    public static string Number(decimal number) => decimal.Round(number, 1, MidpointRounding.AwayFromZero).ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>An edge of what is usual: of a temperature to a tenth, of everything else whole.</summary>
    public static decimal UsualNumber(LimitedValue value, decimal number) =>
        decimal.Round(number, value == LimitedValue.TemperatureFahrenheit ? 1 : 0, MidpointRounding.AwayFromZero);

    /// <summary>The unit.</summary>
    public static string Unit(Quantity value) => value switch
    {
        BodyTemperature v => Unit(v.Unit),
        BodyWeight v => Unit(v.Unit),
        _ => Unit(value.Sign, new(TemperatureUnit.Fahrenheit, WeightUnit.Pounds)),
    };

    /// <summary>The unit in which a home's limits and charts of a sign stand.</summary>
    public static string Unit(VitalSign sign, RosterUnits units) => sign switch
    {
        VitalSign.Temperature => Unit(units.Temperature),
        VitalSign.Pulse or VitalSign.Respirations => "/min",
        VitalSign.BloodPressure => "mmHg",
        VitalSign.OxygenSaturation => "%",
        VitalSign.Weight => Unit(units.Weight),
        VitalSign.Pain => "of 10",
        _ => throw new ArgumentOutOfRangeException(nameof(sign), sign, "no such vital sign"),
    };

    /// <summary>The names of signs as a list: "Pulse, respirations".</summary>
    public static string Names(IEnumerable<VitalSign> signs) => string.Join(", ", signs.Select((sign, i) => i == 0 ? Name(sign) : Name(sign).ToLowerInvariant()));

    /// <summary>The name of a sign.</summary>
    public static string Name(VitalSign sign) => sign switch
    {
        VitalSign.OxygenSaturation => "Oxygen saturation",
        VitalSign.BloodPressure => "Blood pressure",
        _ => sign.ToString(),
    };

    /// <summary>The name of a sign where there is little room, as it is usual in charts.</summary>
    public static string ShortName(VitalSign sign) => sign switch
    {
        VitalSign.Temperature => "Temp",
        VitalSign.Respirations => "Resp",
        VitalSign.BloodPressure => "BP",
        VitalSign.OxygenSaturation => "SpO2",
        _ => sign.ToString(),
    };

    /// <summary>What was said about the way it was taken, one part each.</summary>
    public static IReadOnlyList<string> How(Circumstances how)
    {
        List<string> said = [];
        said.AddRange(how.Site is { } site ? [RosterWords.Of(RosterWords.Sites, site)] : []);
        said.AddRange(how.Arm is { } arm ? [arm == Arm.Left ? "left arm" : "right arm"] : []);
        said.AddRange(how.Position is { } position ? [position.ToString().ToLowerInvariant()] : []);
        said.AddRange(how.Oxygen is { } oxygen ? [Oxygen(oxygen)] : []);
        said.AddRange(how.Uneven ? ["uneven"] : []);
        said.AddRange(how.Machine ? ["machine"] : []);
        said.AddRange(how is { Counted: { } counted, CountedSeconds: { } seconds } ? [$"counted {counted} in {seconds} s"] : []);
        said.AddRange(how.TooEarly ? ["too early"] : []);
        said.AddRange(how.SaidAsGuessFirst ? ["said as a guess first"] : []);
        return said;
    }

    /// <summary>What must be seen beside the value at a glance: not whether it was counted, and by which arm.</summary>
    public static string HowInShort(Circumstances how)
    {
        IEnumerable<string?> parts =
        [
            how.Site is { } site ? RosterWords.Of(RosterWords.Sites, site) : null,
            how.Position is BodyPosition.Lying or BodyPosition.Standing ? how.Position.ToString()!.ToLowerInvariant() : null,
            how.Oxygen is { } oxygen ? Oxygen(oxygen) : null,
            how.Uneven ? "uneven" : null,
            how.TooEarly ? "too early" : null,
        ];
        return string.Join(", ", parts.OfType<string>());
    }

    /// <summary>Why something was not taken.</summary>
    public static string Reason(NotTakenReason reason) => reason switch
    {
        NotTakenReason.Unsaid => "no reason said",
        NotTakenReason.NotInRoom => "not in the room",
        NotTakenReason.NoEquipment => "no equipment",
        NotTakenReason.CouldNotObtain => "could not obtain",
        _ => reason.ToString().ToLowerInvariant(),
    };

    /// <summary>"Room 12 B".</summary>
    public static string Place(Resident resident) => resident.Room == 0
        ? "Not on the roster"
        : resident.Bed is { } bed ? $"Room {resident.Room} {bed.ToUpperInvariant()}" : $"Room {resident.Room}";

    private static string Unit(TemperatureUnit unit) => unit == TemperatureUnit.Celsius ? "°C" : "°F";

    private static string Unit(WeightUnit unit) => unit == WeightUnit.Kilograms ? "kg" : "lb";

    private static string Oxygen(OxygenSupply oxygen) => oxygen switch
    {
        { IsRoomAir: true } => "room air",
        { LitresPerMinute: { } litres } => $"{Number(litres)} L/min",
        _ => "oxygen",
    };
}
