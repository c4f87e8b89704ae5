using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Dialogue;

/// <summary>The read-back of a reading: its name, each digit by itself, its unit where it could be another, and what was said about
/// the way it was taken (clinical-rules 7.4, R-01 to R-09).</summary>
public static class ReadBackTexts
{
    /// <summary>The text that is spoken and shown.</summary>
    public static string Of(Reading reading)
    {
        string text = $"{SignNames.Of(reading.Value.Sign)}, {Number(reading)}";
        return string.Join(", ", new[] { text }.Concat(Circumstances(reading.How)));
    }

    /// <summary>The same without the unit where it is the usual one: what deviates is said.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="weight">The home's unit of weight.</param>
    public static string InShort(Reading reading, WeightUnit weight)
    {
        bool usual = reading.Value is OxygenSaturation or BodyTemperature { Unit: TemperatureUnit.Fahrenheit } || (reading.Value is BodyWeight w && w.Unit == weight);
        string text = $"{SignNames.Of(reading.Value.Sign)}, {(usual ? NumberAlone(reading.Value) : Number(reading))}";
        return string.Join(", ", new[] { text }.Concat(Circumstances(reading.How)));
    }

    private static string NumberAlone(Quantity value)
    {
        string[] words = Value(value).Split(' ');
        return string.Join(' ', words[..^1]);
    }

    /// <summary>The number alone with its unit, digit by digit.</summary>
    internal static string Value(Quantity value) => value switch
    {
        HeartRate v => DigitWords.Of(v.PerMinute),
        RespiratoryRate v => DigitWords.Of(v.PerMinute),
        OxygenSaturation v => $"{DigitWords.Of(v.Percent)} percent",
        PainScore v => DigitWords.Of(v.OfTen),
        BloodPressure v => $"{DigitWords.Of(v.Systolic)} over {DigitWords.Of(v.Diastolic)}",
        BodyTemperature v => $"{DigitWords.Of(v.Degrees)} {(v.Unit == TemperatureUnit.Fahrenheit ? "Fahrenheit" : "Celsius")}",
        BodyWeight v => $"{DigitWords.Of(v.Value)} {(v.Unit == WeightUnit.Pounds ? "pounds" : "kilograms")}",
        _ => throw new ArgumentOutOfRangeException(nameof(value), value, "no such quantity"),
    };

    private static string Number(Reading reading)
    {
        if (reading.How is not { Counted: { } counted, CountedSeconds: { } seconds })
        {
            return Value(reading.Value);
        }

        string count = $"{DigitWords.Of(counted)} in {Seconds(seconds)} seconds";
        return seconds == 60 ? count : $"{count}, makes {Value(reading.Value)}";
    }

    private static string Seconds(int seconds) => seconds switch
    {
        15 => "fifteen",
        30 => "thirty",
        60 => "sixty",
        _ => DigitWords.Of(seconds),
    };

    /// <summary>What was said about the way a reading was taken, one text each.</summary>
    internal static IEnumerable<string> Circumstances(Circumstances how)
    {
        if (how.Site is { } site)
        {
            yield return SiteName(site);
        }

        if (how.Arm is { } arm)
        {
            yield return arm == Arm.Left ? "left arm" : "right arm";
        }

        if (how.Position is { } position)
        {
            yield return PositionName(position);
        }

        if (how.MinutesStanding is { } minutes)
        {
            yield return minutes == 1 ? "one minute" : $"{DigitWords.Of(minutes)} minutes";
        }

        if (how.Cuff is { } cuff)
        {
            yield return CuffName(cuff);
        }

        if (how.Oxygen is { } oxygen)
        {
            yield return OxygenName(oxygen);
        }

        if (how.Delivery is { } delivery)
        {
            yield return delivery == OxygenDelivery.Mask ? "mask" : "nasal cannula";
        }

        if (how.Device is { } device)
        {
            yield return device == DeviceNote.Own ? "own device" : "other device";
        }

        if (how.Medicine is { } medicine)
        {
            yield return medicine == MedicineTiming.Before ? "before medicine" : "after medicine";
        }

        if (how.Observed)
        {
            yield return "observed";
        }

        if (how.Uneven)
        {
            yield return "uneven";
        }

        if (how.Machine)
        {
            yield return "machine";
        }

        if (how.TooEarly)
        {
            yield return "too early";
        }
    }

    private static string SiteName(TemperatureSite site) => site switch
    {
        TemperatureSite.Mouth => "mouth",
        TemperatureSite.Armpit => "armpit",
        TemperatureSite.Ear => "ear",
        TemperatureSite.Forehead => "forehead",
        TemperatureSite.Rectum => "rectal",
        _ => throw new ArgumentOutOfRangeException(nameof(site), site, "no such site"),
    };

    private static string PositionName(BodyPosition position) => position switch
    {
        BodyPosition.Sitting => "sitting",
        BodyPosition.Lying => "lying",
        BodyPosition.Standing => "standing",
        _ => throw new ArgumentOutOfRangeException(nameof(position), position, "no such position"),
    };

    private static string CuffName(CuffSize cuff) => cuff switch
    {
        CuffSize.Small => "small cuff",
        CuffSize.Large => "large cuff",
        CuffSize.Thigh => "thigh cuff",
        _ => throw new ArgumentOutOfRangeException(nameof(cuff), cuff, "no such cuff"),
    };

    private static string OxygenName(OxygenSupply supply) => supply switch
    {
        { IsRoomAir: true } => "on room air",
        { LitresPerMinute: 1m } => "on one litre",
        { LitresPerMinute: { } litres } => $"on {DigitWords.Of(litres)} litres",
        _ => "on oxygen",
    };
}
