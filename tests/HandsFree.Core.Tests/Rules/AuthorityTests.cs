using FsCheck.Xunit;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Rules;

/// <summary>An order replaces the limits below it on its side of its value, whatever the value and the order (this program's safety page,
/// authority).</summary>
public class AuthorityTests
{
    private const string Seed = "20260311,1";

    private static readonly (string Word, LimitedValue Value, string Prefix, int From, int To)[] Values =
    [
        ("pulse", LimitedValue.Pulse, "pulse.", 20, 250),
        ("respirations", LimitedValue.Respirations, "respirations.", 4, 60),
        ("oxygen", LimitedValue.OxygenSaturation, "oxygen.", 50, 100),
        ("pain", LimitedValue.Pain, "pain.", 0, 10),
    ];

    /// <summary>Rules that are no limit of their value: a cue, what asks for a symptom, a set, a fall from usual, a method.</summary>
    private static readonly HashSet<string> NoLimits =
    [
        .. TestRules.Defaults.Describe()
            .Where(r => r.Danger || r.Conditions.Contains("with ", StringComparison.Ordinal) || r.Authority is RuleAuthority.Entry or RuleAuthority.Method or RuleAuthority.Ordered
                || r.Threshold.Contains("usual", StringComparison.Ordinal) || r.Id is "set.three-pointers" or "oxygen.low-with-second-pointer" or "pulse.uneven" or "oxygen.flow-above-usual")
            .Select(r => r.Id),
    ];

    [Property(MaxTest = 1000, Replay = Seed)]
    public void With_an_order_on_both_sides_only_the_order_decides(int which, int value, int least, int greatest)
    {
        var (word, limited, prefix, from, to) = Values[Within(which, Values.Length)];
        int low = from + Within(least, to - from);
        int high = low + Within(greatest, to - low + 1);
        int number = from + Within(value, to - from + 1);
        var resident = Notation.Resident("") with { OrderedLimits = [new(limited, low, high, "Dr Example", new(2026, 2, 1))] };

        var decision = TestRules.Defaults.Decide(Notation.Reading($"{word} {number}"), Notation.Context() with { Resident = resident });

        var spoke = decision.Reasons.Where(r => r.Outcome != Outcome.Accept && !NoLimits.Contains(r.Rule)).ToList();
        spoke.ShouldBeEmpty($"{word} {number}, ordered {low} to {high}");
        bool lowRule = number < low && limited != LimitedValue.Pain;
        bool highRule = number > high && limited != LimitedValue.OxygenSaturation;
        (decision.Outcome >= Outcome.ReportThisShift).ShouldBe(lowRule || highRule, $"{word} {number}, ordered {low} to {high}: {string.Join(" | ", decision.Reasons)}");
        decision.Reasons.ShouldAllBe(r => r.Rule.StartsWith(prefix, StringComparison.Ordinal));
    }

    [Property(MaxTest = 300, Replay = Seed)]
    public void A_danger_value_is_called_whatever_is_ordered(int value, int least)
    {
        int number = 50 + Within(value, 35);
        var resident = Notation.Resident("") with { OrderedLimits = [new(LimitedValue.OxygenSaturation, Within(least, 100), null, "Dr Example", new(2026, 2, 1))] };

        TestRules.Defaults.Decide(Notation.Reading($"oxygen {number}"), Notation.Context() with { Resident = resident }).Danger.ShouldBeTrue();
    }

    [Property(MaxTest = 500, Replay = Seed)]
    public void The_order_in_which_a_set_is_measured_does_not_change_the_worst_of_it(int seed, int pulse, int breaths, int oxygen, int temperature, int systolic)
    {
        string[] set =
        [
            $"pulse {60 + Within(pulse, 80)} seconds 60", $"respirations {14 + Within(breaths, 16)} seconds 60", $"oxygen {88 + Within(oxygen, 12)} air",
            $"temperature {97 + Within(temperature, 5)}.2 F mouth", $"bp {90 + Within(systolic, 110)}/60 machine",
        ];
        string[] shuffled = [.. set];
        new Random(seed).Shuffle(shuffled);

        Worst(shuffled).ShouldBe(Worst(set), string.Join(", ", shuffled));
    }

    [Fact]
    public void The_order_of_files_and_of_rules_does_not_change_a_decision()
    {
        List<RuleFile> files = [.. Rulebook.Defaults()];
        files.Reverse();
        var reversed = TestRules.Loaded(Rulebook.Load(files));
        foreach (var row in Table.Read("worked-examples.tsv"))
        {
            var context = Notation.Context(row["resident"], row["earlier"], row["symptoms"], int.Parse(row["rechecks"]));
            var there = reversed.Decide(Notation.Reading(row["reading"]), context);
            var here = TestRules.Defaults.Decide(Notation.Reading(row["reading"]), context);
            there.Reasons.ShouldBe(here.Reasons);
            (there.Outcome, there.Recheck, there.Danger).ShouldBe((here.Outcome, here.Recheck, here.Danger));
        }
    }

    private static (Outcome Outcome, bool Danger) Worst(string[] readings)
    {
        List<PastReading> earlier = [];
        var worst = Outcome.Accept;
        bool danger = false;
        for (int i = 0; i < readings.Length; i++)
        {
            var at = Notation.Now + TimeSpan.FromMinutes(i);
            var reading = Notation.Reading(readings[i]);
            var decision = TestRules.Defaults.Decide(reading, Notation.Context() with { Earlier = [.. earlier], At = at });
            worst = decision.Outcome > worst ? decision.Outcome : worst;
            danger |= decision.Danger;
            earlier.Add(new(reading, at));
        }

        return (worst, danger);
    }

    private static int Within(int number, int count) => (int)((uint)number % (uint)count);
}
