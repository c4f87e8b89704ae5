using System.Globalization;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Reports;

/// <summary>Plans in words and in figures.</summary>
public static class PlanTexts
{
    /// <summary>"pulse, four five to one one zero", "upper pressure, at least nine zero".</summary>
    public static string Range(PlanMade plan) => Range(plan.ToLimit());

    private static string Range(OrderedLimit plan) => $"{Name(plan.Value)}, " + plan switch
    {
        { Least: { } least, Greatest: { } greatest } => $"{DigitWords.Of(least)} to {DigitWords.Of(greatest)}",
        { Least: { } least } => $"at least {DigitWords.Of(least)}",
        { Greatest: { } greatest } => $"at most {DigitWords.Of(greatest)}",
        _ => "no limit",
    };

    /// <summary>The plan for which a reading is not reported, as it is said after it: "Nurse's plan: upper pressure, at most two zero zero, until 22:00."</summary>
    public static string Silencing(OrderedLimit plan) => $"Nurse's plan: {Range(plan)}, until {plan.Until?.ToString("H:mm", CultureInfo.InvariantCulture)}.";

    /// <summary>"pulse 45 to 110", "upper pressure 90 or more".</summary>
    public static string InFigures(PlanMade plan) => InFigures(plan.ToLimit());

    /// <summary>An order or a plan: "oxygen 88 to 92".</summary>
    public static string InFigures(OrderedLimit limit) => $"{Name(limit.Value)} " + limit switch
    {
        { Least: { } least, Greatest: { } greatest } => $"{Figure(least)} to {Figure(greatest)}",
        { Least: { } least } => $"{Figure(least)} or more",
        { Greatest: { } greatest } => $"{Figure(greatest)} or less",
        _ => "without a limit",
    };

    private static string Figure(decimal number) => number.ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>What is limited, as it is spoken.</summary>
    public static string Name(LimitedValue value) => value switch
    {
        LimitedValue.TemperatureFahrenheit => "temperature",
        LimitedValue.Pulse => "pulse",
        LimitedValue.Respirations => "respirations",
        LimitedValue.Systolic => "upper pressure",
        LimitedValue.Diastolic => "lower pressure",
        LimitedValue.OxygenSaturation => "oxygen",
        LimitedValue.WeightPounds => "weight",
        LimitedValue.Pain => "pain",
        _ => throw new ArgumentOutOfRangeException(nameof(value), value, "no such limit"),
    };
}
