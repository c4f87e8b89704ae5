using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Core.Tests.Dialogue;
using HandsFree.Core.Tests.Journal;
using HandsFree.Core.Tests.Rules;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Reports;

/// <summary>The nurse's plan is a limit for a time; what is worse breaks through (safety rule 19). The thresholds are the program's own
/// rules: above 110 with a recheck, above 130 now, danger above 150.</summary>
public sealed class PlanTests
{
    private static readonly IRulebook Rules = Rulebook.Load().Rulebook.ShouldNotBeNull();

    private static Entries Planned(int hours = 4) => new Entries().Reading("pulse 134").Report(VitalSign.Pulse, "1").Acknowledged("2")
        .Plan("2", LimitedValue.Pulse, null, 140, hours);

    [Theory]
    [InlineData("pulse 134 counted 134 seconds 60", Outcome.Accept, false)]
    [InlineData("pulse 140 counted 140 seconds 60", Outcome.Accept, false)]
    [InlineData("pulse 141 counted 141 seconds 60", Outcome.ReportNow, false)]
    [InlineData("pulse 152 counted 152 seconds 60", Outcome.ReportNow, true)]
    [InlineData("pulse 44 counted 44 seconds 60", Outcome.ReportNow, false)]
    public void Within_the_plan_nothing_is_reported_and_what_is_worse_is(string reading, Outcome outcome, bool danger)
    {
        Entries entries = Planned();

        Decision decision = Decide(entries, reading, entries.Now.AddHours(1));

        (decision.Outcome, decision.Danger).ShouldBe((outcome, danger));
    }

    // 220 and more: NEWS2, Royal College of Physicians, 2017, chart 1, scores 3 (clinical-rules 2.1, read there; the chart was not opened here).
    // Above 120: ACC/AHA 2017 as quoted in clinical-rules 4.3. The others: the program's danger values, a proposal to be approved by the home.
    [Theory]
    [InlineData(LimitedValue.Systolic, 40, 259, "bp 219/100", "bp 220/100")]
    [InlineData(LimitedValue.Systolic, 40, 259, "bp 80/50", "bp 79/50")]
    [InlineData(LimitedValue.Diastolic, 20, 159, "bp 180/120", "bp 180/121")]
    [InlineData(LimitedValue.Pulse, 20, 249, "pulse 150 counted 150 seconds 60", "pulse 151 counted 151 seconds 60")]
    [InlineData(LimitedValue.Pulse, 20, 249, "pulse 40 counted 40 seconds 60", "pulse 39 counted 39 seconds 60")]
    [InlineData(LimitedValue.Respirations, 4, 59, "respirations 30 counted 30 seconds 60", "respirations 31 counted 31 seconds 60")]
    [InlineData(LimitedValue.Respirations, 4, 59, "respirations 8 counted 8 seconds 60", "respirations 7 counted 7 seconds 60")]
    [InlineData(LimitedValue.OxygenSaturation, 50, null, "oxygen 85", "oxygen 84")]
    [InlineData(LimitedValue.TemperatureFahrenheit, 86, 109, "temperature 103.0 F forehead", "temperature 103.1 F forehead")]
    [InlineData(LimitedValue.TemperatureFahrenheit, 86, 109, "temperature 95.0 F forehead", "temperature 94.9 F forehead")]
    [InlineData(LimitedValue.Pain, null, 10, "pain 8", "pain 9")]
    public void However_wide_a_plan_is_one_value_on_each_dangerous_side_is_reported(LimitedValue value, int? least, int? greatest, string within, string beyond)
    {
        Entries entries = new Entries().Reading("pulse 134").Report(VitalSign.Pulse, "1").Acknowledged("2").Plan("2", value, least, greatest, 4);

        Decide(entries, within, entries.Now.AddHours(1), rechecks: 2).Reasons.ShouldNotContain(r => r.Rule.Contains("beyond-plan", StringComparison.Ordinal));
        Decision reported = Decide(entries, beyond, entries.Now.AddHours(1), rechecks: 2);
        reported.Outcome.ShouldBe(Outcome.ReportNow);
        reported.Reasons.ShouldContain(r => r.Rule.Contains("beyond-plan", StringComparison.Ordinal));
        Decide(entries, beyond, entries.Now.AddHours(5), rechecks: 2).Reasons.ShouldNotContain(r => r.Rule.Contains("beyond-plan", StringComparison.Ordinal));
    }

    [Fact]
    public void A_reading_that_a_plan_silences_names_the_plan_and_one_that_it_does_not_names_none()
    {
        Entries entries = Planned();

        Decide(entries, "pulse 134 counted 134 seconds 60", entries.Now.AddHours(1)).SilencedBy.ShouldHaveSingleItem().Greatest.ShouldBe(140);
        Decide(entries, "pulse 88 counted 88 seconds 60", entries.Now.AddHours(1)).SilencedBy.ShouldBeEmpty();
        Decide(entries, "pulse 141 counted 141 seconds 60", entries.Now.AddHours(1)).SilencedBy.ShouldBeEmpty();
    }

    [Fact]
    public void A_plan_that_was_withdrawn_stands_no_more_and_stood_before()
    {
        Entries entries = Planned();
        PlanMade plan = entries.All.OfType<PlanMade>().Single();
        DateTimeOffset then = entries.Now.AddHours(1);
        JournalEvent[] journal = [.. entries.All, new PlanWithdrawn("w", "nurse-1", then, plan.Resident, plan.Report, plan.Id, "settled")];

        Plans.Standing(journal, plan.Resident, then.AddMinutes(-1)).ShouldHaveSingleItem();
        Plans.Standing(journal, plan.Resident, then).ShouldBeEmpty();
        ReportBook.Of(journal).ById(plan.Report)!.Plans.ShouldBeEmpty();
    }

    [Fact]
    public void After_its_end_the_plan_is_none()
    {
        Entries entries = Planned(hours: 4);

        Decide(entries, "pulse 134 counted 134 seconds 60", entries.Now.AddMinutes(239)).Outcome.ShouldBe(Outcome.Accept);
        Decide(entries, "pulse 134 counted 134 seconds 60", entries.Now.AddMinutes(241)).Outcome.ShouldBe(Outcome.ReportNow);
    }

    [Fact]
    public void A_later_plan_takes_the_place_of_an_earlier_one_and_one_in_error_of_none()
    {
        Entries stricter = Planned().Plan("2", LimitedValue.Pulse, null, 120, 4);

        Decide(stricter, "pulse 134 counted 134 seconds 60", stricter.Now).Outcome.ShouldBe(Outcome.ReportNow);
        Decide(stricter.InError("5"), "pulse 134 counted 134 seconds 60", stricter.Now).Outcome.ShouldBe(Outcome.Accept);
    }

    [Fact]
    public void Plans_of_others_change_nothing() =>
        new Resident { Id = "other", Name = "Other Body", Room = 3, Born = new DateOnly(1940, 1, 1) }
            .WithPlans(Planned().All, Notation.Now.AddHours(1)).OrderedLimits.ShouldBeEmpty();

    [Fact]
    public void In_a_round_the_plan_decides()
    {
        DateTimeOffset before = TestHome.Morning.AddHours(-1);
        PlanMade plan = new("p-1", "nurse-1", before, "r-12b", "x-1", LimitedValue.Pulse, null, 140, before.AddHours(8), "");
        string[] said = ["room twelve bed b", "yes", "march third", "pulse one thirty four", "yes", "one three four", "yes"];

        new Talk(rules: Rules, past: [plan]).Go(said[..5]).Journal.OfType<ReportOpened>().ShouldBeEmpty();
        new Talk(rules: Rules, past: [plan]).Go(said[..5]).Journal.OfType<RecheckAsked>().ShouldBeEmpty();
        new Talk(rules: Rules).Go(said).Journal.Any(e => e is ReportOpened or RecheckAsked).ShouldBeTrue();
    }

    private static Decision Decide(Entries entries, string reading, DateTimeOffset at, int rechecks = 0)
    {
        Resident resident = Notation.Resident("").WithPlans(entries.All, at);
        return Rules.Decide(Notation.Reading(reading), new DecisionContext(resident, [], rechecks, at, new HashSet<string>()));
    }
}
