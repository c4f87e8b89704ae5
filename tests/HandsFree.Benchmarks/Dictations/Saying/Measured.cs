using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;

namespace HandsFree.Benchmarks.Dictations.Saying;

/// <summary>A reading as a person thinks of it: what, how much, in which unit, and what was said about the way it was taken, in the
/// words of a read-back. The truth of a dictation, what was read back, and what was saved are all written like this and compared.</summary>
/// <param name="Sign">"temperature", "pulse", "respirations", "blood pressure", "oxygen", "weight" or "pain".</param>
/// <param name="First">The number; of a pressure the upper one.</param>
/// <param name="Second">The lower number of a pressure, else null.</param>
/// <param name="Unit">"Fahrenheit", "Celsius", "pounds", "kilograms", or empty.</param>
/// <param name="Ways">"left arm", "on room air", …, parted by commas, in any order; empty for none.</param>
internal sealed record Measured(string Sign, decimal First, decimal? Second = null, string Unit = "", string Ways = "")
{
    /// <summary>All signs.</summary>
    public static IReadOnlyList<string> Signs { get; } =
        ["temperature", "pulse", "respirations", "blood pressure", "oxygen", "weight", "pain"];

    /// <summary>Whether the numbers are the same.</summary>
    public bool SameNumber(Measured other) => First == other.First && Second == other.Second && Unit == other.Unit;

    /// <summary>Whether all is the same.</summary>
    public bool Is(Measured other) => Sign == other.Sign && SameNumber(other) && Sorted(Ways).SequenceEqual(Sorted(other.Ways));

    /// <summary>Whether this, as it was read back, is what was meant: that somebody breathes room air is not said, and that
    /// it was too early is the program's remark.</summary>
    public bool ReadsBack(Measured meant) =>
        Sign == meant.Sign && SameNumber(meant) && Sorted(Ways).Except(["too early"]).SequenceEqual(Sorted(meant.Ways).Except(["on room air"]));

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant(
        $"{Sign} {First:0.#}{(Second is { } low ? $"/{low:0.#}" : "")}{(Unit.Length > 0 ? " " + Unit : "")}{(Ways.Length > 0 ? $" ({Ways})" : "")}");

    /// <summary>What the journal holds.</summary>
    public static Measured Of(Reading reading) => reading.Value switch
    {
        HeartRate v => new("pulse", v.PerMinute, Ways: WaysOf(reading.How)),
        RespiratoryRate v => new("respirations", v.PerMinute, Ways: WaysOf(reading.How)),
        OxygenSaturation v => new("oxygen", v.Percent, Ways: WaysOf(reading.How)),
        PainScore v => new("pain", v.OfTen, Ways: WaysOf(reading.How)),
        BloodPressure v => new("blood pressure", v.Systolic, v.Diastolic, Ways: WaysOf(reading.How)),
        BodyTemperature v => new("temperature", v.Degrees, null, v.Unit == TemperatureUnit.Fahrenheit ? "Fahrenheit" : "Celsius", WaysOf(reading.How)),
        BodyWeight v => new("weight", v.Value, null, v.Unit == WeightUnit.Pounds ? "pounds" : "kilograms", WaysOf(reading.How)),
        _ => throw new ArgumentOutOfRangeException(nameof(reading), reading.Value, "no such quantity"),
    };

    private static IEnumerable<string> Sorted(string ways) =>
        ways.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Order(StringComparer.Ordinal);

    private static string WaysOf(Circumstances how)
    {
        string?[] ways =
        [
            how.Site switch
            {
                null => null,
                TemperatureSite.Rectum => "rectal",
                { } site => $"{site}".ToLowerInvariant(),
            },
            how.Arm is { } arm ? $"{arm} arm".ToLowerInvariant() : null,
            how.Position is { } position ? $"{position}".ToLowerInvariant() : null,
            how.Oxygen switch
            {
                null => null,
                { IsRoomAir: true } => "on room air",
                { LitresPerMinute: { } litres } => $"on {(litres == 1 ? "one litre" : DigitNames.Of(litres) + " litres")}",
                _ => "on oxygen",
            },
            how.Uneven ? "uneven" : null,
            how.Machine ? "machine" : null,
        ];
        return string.Join(", ", ways.OfType<string>());
    }
}
