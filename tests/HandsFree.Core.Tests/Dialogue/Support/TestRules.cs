using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Rules;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>A few invented rules, enough to lead the dialogue everywhere; the real ones have their own tests.</summary>
internal sealed class TestRules : IRulebook
{
    private static readonly Recheck CountSixty = new("test-recheck", "Count sixty seconds.", TimeSpan.Zero);
    private static readonly Recheck Rest = new("test-rest", "Let the resident rest, then measure.", TimeSpan.FromMinutes(5));

    public string Hash => "0123";

    public Decision Decide(Reading reading, DecisionContext context) => reading switch
    {
        { How: { Counted: { } n, CountedSeconds: 30 } } when reading.Value is HeartRate h && h.PerMinute != 2 * n => Is(Outcome.AskAgain),
        { Value: HeartRate h } => Pulse(h.PerMinute, context),
        { Value: RespiratoryRate { PerMinute: < 4 or > 60 } } => Is(Outcome.AskAgain),
        { Value: RespiratoryRate { PerMinute: > 28 or < 10 } r } => Is(Outcome.ReportNow, danger: r.PerMinute is > 30 or < 8),
        { Value: BodyTemperature { Fahrenheit: < 85 or > 110 } } => Is(Outcome.AskAgain),
        { Value: BodyTemperature { Fahrenheit: > 100 } } => Is(Outcome.ReportThisShift, Once(Rest, context)),
        { Value: OxygenSaturation { Percent: > 100 or < 50 } } => Is(Outcome.AskAgain),
        { Value: OxygenSaturation { Percent: < 85 } } => Is(Outcome.ReportNow, Once(CountSixty, context), danger: true),
        { Value: BloodPressure { PulsePressure: <= 0 } } => Is(Outcome.AskAgain),
        { Value: BloodPressure { Systolic: > 180 } } => Is(Outcome.ReportThisShift, Once(Rest, context)),
        _ => Is(Outcome.Accept),
    };

    private static Decision Pulse(int perMinute, DecisionContext context) => perMinute switch
    {
        < 20 or > 250 => Is(Outcome.AskAgain),
        < 50 => Is(Outcome.ReportNow, context.RechecksDone < 1 ? CountSixty : null, danger: perMinute < 40),
        > 110 when context.Symptoms.Contains("short of breath") => Is(Outcome.ReportNow),
        > 110 => Is(Outcome.ReportThisShift),
        _ => Is(Outcome.Accept),
    };

    private static Recheck? Once(Recheck recheck, DecisionContext context) => context.RechecksDone < 1 ? recheck : null;

    private static Decision Is(Outcome outcome, Recheck? recheck = null, bool danger = false) =>
        new(outcome, recheck, [new Reason("test-rule", "outside the limits of the test", "no source: a test", RuleMark.CommonPractice, outcome)], danger, "0123");
}
