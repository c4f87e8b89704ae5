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

    private static Decision Decide(Entries entries, string reading, DateTimeOffset at)
    {
        Resident resident = Notation.Resident("").WithPlans(entries.All, at);
        return Rules.Decide(Notation.Reading(reading), new DecisionContext(resident, [], 0, at, new HashSet<string>()));
    }
}
