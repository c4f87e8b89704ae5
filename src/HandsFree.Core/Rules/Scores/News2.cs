namespace HandsFree.Core.Rules.Scores;

/// <summary>National Early Warning Score 2, Royal College of Physicians, December 2017, chart 1, for adults with acute illness:
/// information beside the rules, never instead of them, and off by default. Not validated for routine rounds of a home.</summary>
/// <param name="Components">Respirations, saturation, oxygen, systolic, pulse, consciousness, temperature; each 0 to 3.</param>
public sealed record News2(IReadOnlyList<int> Components)
{
    /// <summary>The sum, 0 to 20.</summary>
    public int Total => Components.Sum();

    /// <summary>Whether one parameter alone scores 3.</summary>
    public bool HasSingleThree => Components.Contains(3);

    /// <summary>The classes of chart 4 in words: zero, low, single-3, medium, medium + single-3, high.</summary>
    public string Class => Total switch
    {
        >= 7 => "high",
        >= 5 => HasSingleThree ? "medium + single-3" : "medium",
        _ when HasSingleThree => "single-3",
        0 => "zero",
        _ => "low",
    };

    /// <summary>The score, or null where a parameter is missing: never a partial total.</summary>
    public static News2? Of(News2Parameters p) => p is
    {
        Respirations: { } respirations,
        OxygenSaturation: { } saturation,
        OnOxygen: { } onOxygen,
        Systolic: { } systolic,
        Pulse: { } pulse,
        Alert: { } alert,
        Celsius: { } celsius,
    }
        ? new([
            respirations switch { <= 8 => 3, <= 11 => 1, <= 20 => 0, <= 24 => 2, _ => 3 },
            p.Scale2 ? Scale2(saturation, onOxygen) : saturation switch { <= 91 => 3, <= 93 => 2, <= 95 => 1, _ => 0 },
            onOxygen ? 2 : 0,
            systolic switch { <= 90 => 3, <= 100 => 2, <= 110 => 1, <= 219 => 0, _ => 3 },
            pulse switch { <= 40 => 3, <= 50 => 1, <= 90 => 0, <= 110 => 1, <= 130 => 2, _ => 3 },
            alert ? 0 : 3,
            decimal.Round(celsius, 1, MidpointRounding.AwayFromZero) switch { <= 35.0m => 3, <= 36.0m => 1, <= 38.0m => 0, <= 39.0m => 1, _ => 2 },
        ])
        : null;

    private static int Scale2(int saturation, bool onOxygen) => saturation switch
    {
        <= 83 => 3,
        <= 85 => 2,
        <= 87 => 1,
        <= 92 => 0,
        _ when !onOxygen => 0,
        <= 94 => 1,
        <= 96 => 2,
        _ => 3,
    };
}
