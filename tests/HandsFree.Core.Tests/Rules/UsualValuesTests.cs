using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Core.Tests.Journal;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Rules;

/// <summary>What is usual is taken from at least five readings and freezes while something is known to be wrong (this program's safety
/// page, rule 14).</summary>
public class UsualValuesTests
{
    private const string FiveSlow = "1d pulse 56;2d pulse 55;3d pulse 57;4d pulse 56;5d pulse 56";

    [Fact]
    public void Five_readings_make_a_usual_value() =>
        Decide("", FiveSlow).Outcome.ShouldBe(Outcome.Accept);

    [Fact]
    public void Readings_under_an_antibiotic_do_not_count()
    {
        var context = Notation.Context("", FiveSlow);
        var resident = context.Resident with { UsualFrozen = [new("antibiotic", new(2026, 3, 9), new(2026, 3, 12))] };

        TestRules.Defaults.Decide(Notation.Reading("pulse 56 seconds 60"), context with { Resident = resident }).Outcome.ShouldBe(Outcome.ReportThisShift);
    }

    [Fact]
    public void Readings_under_a_plan_do_not_count()
    {
        var context = Notation.Context("", FiveSlow);
        var plan = new OrderedLimit(LimitedValue.Systolic, 90, null, "Nurse Example", new(2026, 3, 9)) { Until = Notation.Now };

        TestRules.Defaults.Decide(Notation.Reading("pulse 56 seconds 60"), context with { Resident = context.Resident with { OrderedLimits = [plan] } })
            .Outcome.ShouldBe(Outcome.ReportThisShift);
    }

    [Fact]
    public void What_a_report_rests_on_and_what_is_measured_while_it_is_open_does_not_count()
    {
        Entries entries = new Entries().Reading("pulse 70").Reading("pulse 56").Report(VitalSign.Pulse, "2").Reading("pulse 55").Acknowledged("3").Reading("pulse 71");

        PastReadings.Of(entries.All, Entries.Resident).Select(p => p.CountsAsUsual).ShouldBe([true, false, false, true]);
    }

    [Fact]
    public void A_report_that_was_an_error_freezes_nothing()
    {
        Entries entries = new Entries().Reading("pulse 56").Report(VitalSign.Pulse, "1").Reading("pulse 55").InError("2");

        PastReadings.Of(entries.All, Entries.Resident).ShouldAllBe(p => p.CountsAsUsual);
    }

    private static Decision Decide(string resident, string earlier) =>
        TestRules.Defaults.Decide(Notation.Reading("pulse 56 seconds 60"), Notation.Context(resident, earlier));
}
