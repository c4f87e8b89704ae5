using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;
using HandsFree.Pages.Handovers;

namespace HandsFree.Pages.Texts;

/// <summary>What every page says of itself.</summary>
public static class PageTexts
{
    /// <summary>The cautions.</summary>
    public const string Cautions =
        "HandsFree is an aid to recording and reporting. It is not a medical device and no substitute for judgement. Licensed staff decide. "
        + "The home's policy and the resident's orders stand above what is printed here. Room and bed are a place and no identifier.";

    /// <summary>In the foot of every page.</summary>
    public const string Foot = "Not a medical device. Licensed staff decide; policy and orders stand above. Personal data, not sealed: shred after use.";

    /// <summary>How the small trends and the marks are read.</summary>
    public const string TrendKey =
        "In each column: last value (grey: before this shift), time or day, ~ for a late entry, (what is usual), 14 days. Dashed line: limit beyond which a nurse is told of a single value. Grey band: usual. "
        + "Dot: reading; ring: recheck; triangle: beyond a limit; cross: counts no more. Bars of BP reach from diastolic to systolic.";

    /// <summary>The title of a trend page.</summary>
    public const string TrendTitle = "Trend";

    /// <summary>The heading of the table of readings.</summary>
    public const string EveryReading = "Every reading, the latest first";

    /// <summary>Where there is none.</summary>
    public const string NoReading = "No reading in this time.";

    /// <summary>How the large charts are read.</summary>
    public const string ChartKey =
        "Dashed line: limit beyond which a nurse is told of a single value. Grey band: usual. Dot: reading; ring: recheck; triangle: beyond a limit, empty for a recheck; "
        + "cross: counts no more, with a line to what took its place. L: late entry; G: said as a guess first; words: taken otherwise than before. "
        + "Bars of blood pressure reach from diastolic to systolic.";

    /// <summary>The heading of the list of all residents.</summary>
    public const string Everyone = "Everyone";

    /// <summary>The title of a unit's pages.</summary>
    public static string HandoverTitle(string? unit) => unit is null ? "Handover" : $"Handover: {unit}";

    /// <summary>A remark as a sentence.</summary>
    public static string Remark(string remark) => $"{char.ToUpperInvariant(remark[0])}{remark[1..]}.";

    /// <summary>The heading of a column: "Temp °F".</summary>
    public static string Column(VitalSign sign, RosterUnits units) => $"{Written.ShortName(sign)} {Written.Unit(sign, units)}";

    /// <summary>What is usual, beside a value.</summary>
    public static string Usual(string usual) => $"({usual})";

    /// <summary>When and how a value was taken.</summary>
    public static string WhenAndHow(SignCell cell) => cell.How.Length > 0 ? $"{cell.When} {cell.How}" : cell.When;

    /// <summary>Until when, from when, of which device.</summary>
    public static string Facts(SheetFacts facts) => string.Join(
        " · ",
        new[]
        {
            facts.Home,
            $"since {Clock.Whole(facts.Since)}",
            $"made {Clock.Whole(facts.At)}{(facts.By is { } by ? $" by {by}" : "")}",
            $"record of device {facts.Device} up to entry {facts.Entries.ToString("#,0", System.Globalization.CultureInfo.InvariantCulture)}{(facts.Anchor is { } anchor ? $" ({anchor})" : "")}",
        }.OfType<string>());
}
