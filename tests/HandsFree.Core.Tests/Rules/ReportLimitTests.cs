using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Core.Rules.Limits;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Rules;

/// <summary>The lines that charts draw are held against the decisions themselves: on the inner side of a line nobody is told of a single
/// value, one step beyond it somebody is.</summary>
public sealed class ReportLimitTests
{
    private static readonly DateTimeOffset At = new(2026, 3, 10, 9, 0, 0, TimeSpan.Zero);
    private static readonly Rulebook Rules = Rulebook.Load().Rulebook!;
    private static readonly Resident Plain = new() { Id = "r1", Name = "Ada Quill", Room = 12, Born = new(1931, 3, 9) };

    private static readonly Resident Ordered = Plain with
    {
        UsualOxygen = new OxygenSupply(2),
        OrderedLimits =
        [
            new(LimitedValue.OxygenSaturation, 88, 92, "Dr Example", new(2026, 2, 1)),
            new(LimitedValue.Pulse, 45, null, "Dr Example", new(2026, 2, 1)),
            new(LimitedValue.Systolic, null, 200, "Dr Example", new(2026, 2, 1)) { Until = At.AddDays(-1) },
        ],
    };

    public static TheoryData<LimitedValue, bool> Numbers
    {
        get
        {
            TheoryData<LimitedValue, bool> data = [];
            foreach (LimitedValue value in Enum.GetValues<LimitedValue>().Except([LimitedValue.WeightPounds]))
            {
                data.Add(value, false);
                data.Add(value, true);
            }

            return data;
        }
    }

    private static DecisionContext Context(Resident resident) => new(resident, [], 2, At, new HashSet<string>());

    private static Quantity Quantity(LimitedValue value, decimal number) => value switch
    {
        LimitedValue.TemperatureFahrenheit => BodyTemperature.FromFahrenheit(number),
        LimitedValue.Pulse => HeartRate.FromPerMinute((int)number),
        LimitedValue.Respirations => RespiratoryRate.FromPerMinute((int)number),
        LimitedValue.Systolic => BloodPressure.FromMillimetresOfMercury((int)number, (int)(number * 0.6m)),
        LimitedValue.Diastolic => BloodPressure.FromMillimetresOfMercury((int)number + 50, (int)number),
        LimitedValue.OxygenSaturation => OxygenSaturation.FromPercent((int)number),
        _ => PainScore.FromOfTen((int)number),
    };

    private static bool Tells(LimitedValue value, decimal number, Resident resident)
    {
        Circumstances how = new() { CountedSeconds = 60, Counted = (int)number, Site = TemperatureSite.Ear, Oxygen = resident.UsualOxygen };
        return Rules.Decide(new Reading(Quantity(value, number), how), Context(resident)).Outcome is Outcome.ReportThisShift or Outcome.ReportNow;
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void On_the_inner_side_of_a_line_nobody_is_told_and_one_step_beyond_somebody_is(LimitedValue value, bool ordered)
    {
        Resident resident = ordered ? Ordered : Plain;
        decimal step = value == LimitedValue.TemperatureFahrenheit ? 0.1m : 1;
        ReportLimits limits = Rules.LimitsOf(value, Context(resident), null);

        (limits.Low ?? limits.High).ShouldNotBeNull();
        foreach ((ReportLimit? limit, int side) in new[] { (limits.Low, -1), (limits.High, 1) })
        {
            if (limit is not null)
            {
                decimal inner = limit.IsBeyond ? limit.Number - (side * step) : limit.Number;
                limits.SideOf(inner).ShouldBe(0);
                limits.SideOf(inner + (side * step)).ShouldBe(side);
                Tells(value, inner, resident).ShouldBeFalse($"{value} {inner}");
                Tells(value, inner + (side * step), resident).ShouldBeTrue($"{value} {inner + (side * step)}");
            }
        }
    }

    [Fact]
    public void An_order_takes_the_place_of_a_limit_on_its_side_and_one_that_has_ended_does_not()
    {
        Rules.LimitsOf(LimitedValue.Pulse, Context(Ordered), null).ShouldSatisfyAllConditions(
            l => l.Low!.Number.ShouldBe(45), l => l.Low!.OrderedBy.ShouldBe("Dr Example"), l => l.High!.Number.ShouldBe(100), l => l.High!.Authority.ShouldBe(RuleAuthority.Default));
        Rules.LimitsOf(LimitedValue.Systolic, Context(Ordered), null).High!.Number.ShouldBe(180);
    }

    [Fact]
    public void What_is_usual_for_a_resident_moves_the_lines_that_ask_only_for_what_is_new()
    {
        Rules.LimitsOf(LimitedValue.Pulse, Context(Plain), null).Low!.Number.ShouldBe(60);
        Rules.LimitsOf(LimitedValue.Pulse, Context(Plain), 56).Low!.Number.ShouldBe(50);
    }

    [Fact]
    public void A_weight_has_no_line_without_an_order() =>
        Rules.LimitsOf(LimitedValue.WeightPounds, Context(Plain), 150).ShouldBe(ReportLimits.None);

    // Median 72, deviations 0 to 4 with median 2: spread 1.4826 times 2, the usual scaling of the median absolute deviation to a standard
    // deviation of a normal distribution (1 over the 0.75 quantile, 0.6745).
    [Fact]
    public void The_usual_range_is_two_spreads_around_the_median()
    {
        PastReading[] earlier = [.. new[] { 68, 70, 72, 72, 74, 75, 70 }.Select((n, i) => new PastReading(new(HeartRate.FromPerMinute(n), Circumstances.Unsaid), At.AddDays(-i - 1)))];
        UsualRange usual = UsualRange.Of(LimitedValue.Pulse, earlier[0].Reading, Context(Plain) with { Earlier = earlier })!;

        usual.Median.ShouldBe(72);
        usual.Spread.ShouldBe(1.4826m * 2);
        usual.Low.ShouldBe(72 - (2 * 1.4826m * 2));
        UsualRange.Of(LimitedValue.Pulse, earlier[0].Reading, Context(Plain) with { Earlier = [.. earlier.Take(4)] }).ShouldBeNull();
    }
}
