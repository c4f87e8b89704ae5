using System.Globalization;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;

namespace HandsFree.Core.Tests.Rules;

/// <summary>The short notation of the example files: "bp 140/80 lying", "temperature 99.3 F mouth".</summary>
internal static class Notation
{
    public static readonly DateTimeOffset Now = new(2026, 3, 10, 14, 0, 0, TimeSpan.Zero);

    /// <summary>A reading: sign, value, then how it was taken.</summary>
    public static Reading Reading(string text)
    {
        string[] words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var (value, used) = Value(words);
        var how = Circumstances.Unsaid;
        for (int i = used; i < words.Length; i++)
        {
            how = words[i] switch
            {
                "mouth" => how with { Site = TemperatureSite.Mouth },
                "armpit" => how with { Site = TemperatureSite.Armpit },
                "ear" => how with { Site = TemperatureSite.Ear },
                "forehead" => how with { Site = TemperatureSite.Forehead },
                "rectum" => how with { Site = TemperatureSite.Rectum },
                "left" => how with { Arm = Arm.Left },
                "right" => how with { Arm = Arm.Right },
                "lying" => how with { Position = BodyPosition.Lying },
                "sitting" => how with { Position = BodyPosition.Sitting },
                "standing" => how with { Position = BodyPosition.Standing },
                "air" => how with { Oxygen = OxygenSupply.RoomAir },
                "oxygen" => how with { Oxygen = OxygenSupply.FlowUnsaid },
                "litres" => how with { Oxygen = new(Number(words[++i])) },
                "uneven" => how with { Uneven = true },
                "machine" => how with { Machine = true },
                "counted" => how with { Counted = (int)Number(words[++i]) },
                "seconds" => how with { CountedSeconds = (int)Number(words[++i]) },
                "drink" => how with { MinutesSinceFoodOrDrink = (int)Number(words[++i]) },
                string other => throw new FormatException($"{other} in {text}"),
            };
        }

        return new(value, how);
    }

    /// <summary>A resident: parts by semicolon, "usual pulse 56", "ordered oxygen 88-92", "planned pulse 40-160", "not left mastectomy", "litres 2".</summary>
    public static Resident Resident(string text)
    {
        var resident = new Resident { Id = "r1", Name = "Ada Example", Room = 12, Born = new(1940, 5, 6) };
        foreach (string[] part in text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(p => p.Split(' ')))
        {
            resident = part switch
            {
                ["usual", var what, var number, .. var site] => resident with
                {
                    UsualValues = [.. resident.UsualValues, new(Limited(what), Number(number)) { Site = site is [var s] ? Enum.Parse<TemperatureSite>(s, true) : null }],
                },
                ["ordered", var what, var range] => resident with { OrderedLimits = [.. resident.OrderedLimits, Order(what, range)] },
                ["planned", var what, var range] => resident with
                {
                    OrderedLimits = [.. resident.OrderedLimits, Order(what, range) with { Until = Now.AddHours(8) }],
                },
                ["not", var arm, var why] => resident with { ArmsNotToBeUsed = new Dictionary<Arm, string> { [Enum.Parse<Arm>(arm, true)] = why } },
                ["has", .. var condition] => resident with { Conditions = [.. resident.Conditions, string.Join(' ', condition)] },
                ["litres", var flow] => resident with { UsualOxygen = new(Number(flow)) },
                _ => throw new FormatException(text),
            };
        }

        return resident;
    }

    /// <summary>Earlier readings: parts by semicolon, "6h temperature 99.3 F mouth", "30d weight 150 lb", "5m bp 140/80 lying".</summary>
    public static IReadOnlyList<PastReading> Earlier(string text) =>
    [
        .. text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(part =>
        {
            string[] ago = part.Split(' ', 2);
            double number = double.Parse(ago[0][..^1], CultureInfo.InvariantCulture);
            var age = ago[0][^1] switch
            {
                'd' => TimeSpan.FromDays(number),
                'h' => TimeSpan.FromHours(number),
                _ => TimeSpan.FromMinutes(number),
            };
            return new PastReading(Reading(ago[1]), Now - age);
        }).OrderBy(p => p.MeasuredAt),
    ];

    public static DecisionContext Context(string resident = "", string earlier = "", string symptoms = "", int rechecks = 0) => new(
        Resident(resident),
        Earlier(earlier),
        rechecks,
        Now,
        symptoms.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).ToHashSet());

    private static (Quantity Value, int Words) Value(string[] words) => words switch
    {
        ["temperature", var n, "F", ..] => (BodyTemperature.FromFahrenheit(Number(n)), 3),
        ["temperature", var n, "C", ..] => (BodyTemperature.FromCelsius(Number(n)), 3),
        ["temperature", var n, ..] => (BodyTemperature.Inferred(Number(n)) ?? throw new FormatException(n), 2),
        ["pulse", var n, ..] => (HeartRate.FromPerMinute((int)Number(n)), 2),
        ["respirations", var n, ..] => (RespiratoryRate.FromPerMinute((int)Number(n)), 2),
        ["oxygen", var n, ..] => (OxygenSaturation.FromPercent((int)Number(n)), 2),
        ["pain", var n, ..] => (PainScore.FromOfTen((int)Number(n)), 2),
        ["weight", var n, "lb", ..] => (BodyWeight.FromPounds(Number(n)), 3),
        ["weight", var n, "kg", ..] => (BodyWeight.FromKilograms(Number(n)), 3),
        ["bp", var pair, ..] => (BloodPressure.FromMillimetresOfMercury((int)Number(pair.Split('/')[0]), (int)Number(pair.Split('/')[1])), 2),
        _ => throw new FormatException(string.Join(' ', words)),
    };

    private static OrderedLimit Order(string what, string range)
    {
        string[] ends = range.Split('-');
        return new(Limited(what), ends[0].Length > 0 ? Number(ends[0]) : null, ends[1].Length > 0 ? Number(ends[1]) : null, "Dr Example", new(2026, 2, 1));
    }

    private static LimitedValue Limited(string what) => what switch
    {
        "temperature" => LimitedValue.TemperatureFahrenheit,
        "oxygen" => LimitedValue.OxygenSaturation,
        "weight" => LimitedValue.WeightPounds,
        _ => Enum.Parse<LimitedValue>(what, true),
    };

    private static decimal Number(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);
}
