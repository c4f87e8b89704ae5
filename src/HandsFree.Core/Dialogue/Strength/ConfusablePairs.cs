using HandsFree.Core.Quantities;

namespace HandsFree.Core.Dialogue;

/// <summary>Teens and tens that sound alike where both stay plausible (clinical-rules 7.3; 15 and 50 documented by the Pennsylvania
/// Authority 2006, the others by the same sound pattern: common practice, no source).</summary>
internal static class ConfusablePairs
{
    private static readonly (int Teen, int Ten)[] Breaths = [(13, 30), (14, 40), (15, 50)];
    private static readonly (int Teen, int Ten)[] Beats = [(113, 130), (114, 140), (115, 150)];
    private static readonly (int Teen, int Ten)[] Upper =
        [(113, 130), (114, 140), (115, 150), (116, 160), (117, 170), (118, 180), (119, 190)];
    private static readonly (int Teen, int Ten)[] Lower = [(113, 130), (115, 150)];

    /// <summary>Whether the value, said as a word, is always asked in digits: it has a partner that stays plausible. A weight is compared
    /// with the last one instead (clinical-rules 7.3).</summary>
    public static bool AlwaysInDigits(Quantity value) => value is not BodyWeight && Partners(value).Any();

    /// <summary>The values that this one may have been; whether they are plausible is for the rules to say.</summary>
    public static IEnumerable<Quantity> Partners(Quantity value) => value switch
    {
        RespiratoryRate v => Partner(Breaths, v.PerMinute).Select(RespiratoryRate.FromPerMinute),
        HeartRate v => Partner(Beats, v.PerMinute).Select(HeartRate.FromPerMinute),
        BloodPressure v => Partner(Upper, v.Systolic).Select(s => BloodPressure.FromMillimetresOfMercury(s, v.Diastolic))
            .Concat(Partner(Lower, v.Diastolic).Select(d => BloodPressure.FromMillimetresOfMercury(v.Systolic, d))),
        BodyWeight v => Weights(v),
        _ => [],
    };

    private static IEnumerable<int> Partner((int Teen, int Ten)[] pairs, int value)
    {
        foreach (var (teen, ten) in pairs)
        {
            if (value == teen || value == ten)
            {
                yield return value == teen ? ten : teen;
            }
        }
    }

    // 113 and 130 to 219 and 290, whole pounds; tenths are said with "point" after the confusable word and stay.
    private static IEnumerable<Quantity> Weights(BodyWeight weight)
    {
        decimal whole = decimal.Truncate(weight.Value);
        decimal tenths = weight.Value - whole;
        decimal hundreds = decimal.Truncate(whole / 100) * 100;
        decimal rest = whole - hundreds;
        decimal? partner = rest switch
        {
            >= 13 and <= 19 => (rest - 10) * 10,
            30 or 40 or 50 or 60 or 70 or 80 or 90 => rest / 10 + 10,
            _ => null,
        };
        if (partner is { } other && hundreds is (100 or 200))
        {
            decimal value = hundreds + other + tenths;
            yield return weight.Unit == WeightUnit.Pounds ? BodyWeight.FromPounds(value) : BodyWeight.FromKilograms(value);
        }
    }
}
