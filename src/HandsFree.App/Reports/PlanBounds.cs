using System.Globalization;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Core.Rules.Limits;

namespace HandsFree.App.Reports;

/// <summary>How far a plan may go: never past a value that is reported whatever is planned, and past report-now only where somebody ordered it.</summary>
/// <param name="rules">The rules in force.</param>
/// <param name="units">The home's units.</param>
/// <param name="context">The resident and the moment.</param>
internal sealed class PlanBounds(Rulebook rules, RosterUnits units, DecisionContext context)
{
    /// <summary>Why a limit can't be planned, or null where it can.</summary>
    /// <param name="option">"--least" or "--greatest".</param>
    /// <param name="value">What is limited.</param>
    /// <param name="number">The limit as it is kept.</param>
    public string? WhyNot(string option, LimitedValue value, decimal? number) =>
        number is not { } limit ? null
        : rules.BeyondPlansOf(value, low: true) is { } low && IsPast(low, isLow: true, limit) ? Past(option, value, limit, low, "below")
        : rules.BeyondPlansOf(value, low: false) is { } high && IsPast(high, isLow: false, limit) ? Past(option, value, limit, high, "above")
        : null;

    /// <summary>The question that a limit beyond report-now asks: "--greatest 215 is above report-now, 210: who ordered it?"; null for one within.</summary>
    /// <param name="value">What is limited.</param>
    /// <param name="least">The lower limit as it is kept, or null.</param>
    /// <param name="greatest">The upper limit as it is kept, or null.</param>
    public string? Question(LimitedValue value, decimal? least, decimal? greatest) =>
        greatest is { } high && rules.ReportNowOf(value, low: false, context) is { } above && high > above.Number
            ? $"--greatest {Figure(value, high)} is above report-now, {Figure(value, above.Number)}: who ordered it?"
        : least is { } low && rules.ReportNowOf(value, low: true, context) is { } below && low < below.Number
            ? $"--least {Figure(value, low)} is below report-now, {Figure(value, below.Number)}: who ordered it?"
        : null;

    private static bool IsPast(ReportLimit line, bool isLow, decimal limit) =>
        isLow ? limit < line.Number || (line.IsBeyond && limit == line.Number) : limit > line.Number || (line.IsBeyond && limit == line.Number);

    private string Past(string option, LimitedValue value, decimal limit, ReportLimit line, string side) =>
        $"{option} {Figure(value, limit)} can't be planned: {(line.IsBeyond ? $"{Figure(value, line.Number)} and {side}" : $"{side} {Figure(value, line.Number)}")} is reported whatever is planned";

    private string Figure(LimitedValue value, decimal kept) => units.Written(value, kept).ToString("0.#", CultureInfo.InvariantCulture);
}
