using FsCheck.Xunit;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Rules;

/// <summary>A more extreme value never gets a milder decision, whatever is usual, ordered or already rechecked.</summary>
public class MonotoneTests
{
    private const string Seed = "20260310,1";

    /// <summary>One way of getting more extreme: from a middle value in steps outwards.</summary>
    private sealed record Axis(string Name, LimitedValue Value, int Middle, int Step, int Steps, Func<int, Quantity> Make);

    private static readonly Axis[] Axes =
    [
        new("pulse up", LimitedValue.Pulse, 80, 1, 200, HeartRate.FromPerMinute),
        new("pulse down", LimitedValue.Pulse, 80, -1, 80, HeartRate.FromPerMinute),
        new("breaths up", LimitedValue.Respirations, 16, 1, 60, RespiratoryRate.FromPerMinute),
        new("breaths down", LimitedValue.Respirations, 16, -1, 16, RespiratoryRate.FromPerMinute),
        new("systolic up", LimitedValue.Systolic, 128, 2, 90, v => BloodPressure.FromMillimetresOfMercury(v, 74)),
        new("systolic down", LimitedValue.Systolic, 128, -2, 60, v => BloodPressure.FromMillimetresOfMercury(v, 60)),
        new("diastolic up", LimitedValue.Diastolic, 78, 2, 50, v => BloodPressure.FromMillimetresOfMercury(150, v)),
        new("oxygen down", LimitedValue.OxygenSaturation, 99, -1, 99, OxygenSaturation.FromPercent),
        new("Fahrenheit up", LimitedValue.TemperatureFahrenheit, 980, 1, 150, v => BodyTemperature.FromFahrenheit(v / 10m)),
        new("Fahrenheit down", LimitedValue.TemperatureFahrenheit, 980, -1, 150, v => BodyTemperature.FromFahrenheit(v / 10m)),
        new("Celsius up", LimitedValue.TemperatureFahrenheit, 367, 1, 90, v => BodyTemperature.FromCelsius(v / 10m)),
        new("Celsius down", LimitedValue.TemperatureFahrenheit, 367, -1, 90, v => BodyTemperature.FromCelsius(v / 10m)),
        new("weight down", LimitedValue.WeightPounds, 1500, -5, 220, v => BodyWeight.FromPounds(v / 10m)),
        new("pain up", LimitedValue.Pain, 0, 1, 20, PainScore.FromOfTen),
    ];

    [Property(MaxTest = 1000, Replay = Seed)]
    public void A_more_extreme_value_never_gets_a_milder_decision(int axis, int from, int further, int circumstances, int rechecks)
    {
        var chosen = Axes[Within(axis, Axes.Length)];
        int near = Within(from, chosen.Steps);
        int far = near + Within(further, chosen.Steps - near) + 1;
        var context = Context(chosen, Within(circumstances, 64), Within(rechecks, 3));

        Milder(TestRules.Defaults, chosen, near, far, context).ShouldBeNull();
    }

    [Fact]
    public void A_rule_on_the_wrong_side_is_found_by_this_check()
    {
        var broken = TestRules.Loaded(Rulebook.Load([.. Rulebook.Defaults().Select(f => f with { Text = f.Text.Replace("\"above\": 130", "\"at most\": 130") })]));

        Milder(broken, Axes[0], near: 10, far: 51, Context(Axes[0], 0, 0)).ShouldNotBeNull().ShouldContain("pulse.now.high");
    }

    /// <summary>What is milder about the further value, or null.</summary>
    private static string? Milder(Rulebook rules, Axis axis, int near, int far, DecisionContext context)
    {
        var mild = Decide(rules, axis, near, context);
        var severe = Decide(rules, axis, far, context);
        bool dangerLost = mild.Danger && !severe.Danger && severe.Outcome != Outcome.AskAgain;
        return severe.Outcome >= mild.Outcome && !dangerLost
            ? null
            : $"{axis.Name}: {mild} at {axis.Make(axis.Middle + axis.Step * near)}, {severe} at {axis.Make(axis.Middle + axis.Step * far)}; {string.Join(" | ", mild.Reasons)}";
    }

    private static Decision Decide(Rulebook rules, Axis axis, int steps, DecisionContext context) =>
        rules.Decide(new(axis.Make(axis.Middle + axis.Step * steps), Circumstances.Unsaid), context);

    /// <summary>Each bit of the number switches something on: a usual value, orders, symptoms, other readings of the set.</summary>
    private static DecisionContext Context(Axis axis, int bits, int rechecks)
    {
        decimal middle = axis.Value == LimitedValue.TemperatureFahrenheit ? 97.4m : axis.Value == LimitedValue.WeightPounds ? 150 : axis.Middle;
        var context = Notation.Context(
            earlier: (bits & 1) != 0 ? "4m respirations 26;3m oxygen 93 air;2m temperature 100.2 F;2m pulse 112" : "40d weight 160 lb;20d weight 152 lb;3h temperature 99.4 F",
            symptoms: (bits & 2) != 0 ? "short of breath;headache" : "",
            rechecks: rechecks);
        return context with
        {
            Resident = context.Resident with
            {
                UsualValues = (bits & 4) != 0 ? [new(axis.Value, (bits & 8) != 0 ? middle : middle * 0.96m)] : [],
                OrderedLimits = (bits & 16) != 0
                    ? [new(axis.Value, middle * 0.8m, (bits & 32) != 0 ? middle * 1.3m : null, "Dr Example", new(2026, 2, 1))]
                    : [],
            },
        };
    }

    private static int Within(int number, int count) => (int)((uint)number % (uint)count);
}
