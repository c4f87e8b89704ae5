using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Rules.Figures;

/// <summary>A kind of number that a rule can stand on: a value itself, or what follows from it and what is known.</summary>
/// <param name="Name">Its name in rule files and in reasons.</param>
/// <param name="Unit">Its unit, UCUM; empty where the figure has no number.</param>
/// <param name="Signs">The vital signs that it needs; none means any reading.</param>
/// <param name="Of">The number, or null where it can't be known from the situation.</param>
internal sealed record FigureKind(string Name, string Unit, IReadOnlyList<VitalSign> Signs, Func<Situation, Amount?> Of)
{
    /// <summary>The unit of a temperature in rule files: two thresholds, one per spoken unit.</summary>
    public const string TemperatureUnits = "[degF] and Cel";

    /// <summary>The value that an order or a usual value can stand for, where the figure is such a value.</summary>
    public LimitedValue? Limits { get; init; }

    public bool IsTemperature => Unit == TemperatureUnits;

    public bool HasNumber => Unit.Length > 0;

    public string Said(decimal number, bool celsius) =>
        FormattableString.Invariant($"{decimal.Round(number, 2):0.##} {(IsTemperature ? celsius ? "°C" : "°F" : Spelled)}").TrimEnd();

    private string Spelled => Unit switch
    {
        "mm[Hg]" => "mmHg",
        "[lb_av]" => "lb",
        "{score}" => "of 10",
        "1" => "",
        "{beats}" or "{breaths}" => Unit.Trim('{', '}'),
        _ => Unit,
    };
}
