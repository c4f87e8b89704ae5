using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Rules;
using HandsFree.Core.Tests.Dialogue;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Journal;

public sealed class RecheckChainsTests
{
    [Fact]
    public void A_recheck_waits_with_its_due_time_and_its_count()
    {
        RecheckChain chain = Pulse(new Entries().Reading("pulse 132").Recheck(VitalSign.Pulse, "1", minutes: 5));

        chain.RechecksAsked.ShouldBe(1);
        chain.Waiting.ShouldNotBeNull().DueAt.ShouldBe(chain.Waiting.At + TimeSpan.FromMinutes(5));
        chain.Doubted.ShouldNotBeNull().Id.ShouldBe("1");
        chain.WaitsForLater.ShouldBeFalse();
    }

    [Fact]
    public void The_second_reading_is_the_recheck_and_both_are_kept()
    {
        RecheckChain chain = Pulse(new Entries().Reading("pulse 132").Recheck(VitalSign.Pulse, "1").Reading("pulse 134", recheck: true));

        chain.Readings.Select(r => r.Id).ShouldBe(["1", "3"]);
        chain.Waiting.ShouldBeNull();
        chain.RechecksAsked.ShouldBe(1);
    }

    [Fact]
    public void A_second_recheck_is_counted_on() =>
        Pulse(new Entries().Reading("pulse 108 seconds 15").Recheck(VitalSign.Pulse, "1").Reading("pulse 108 seconds 15", recheck: true).Recheck(VitalSign.Pulse, "3"))
            .RechecksAsked.ShouldBe(2);

    [Fact]
    public void A_reading_that_nobody_asked_for_keeps_the_count_within_the_hour_and_begins_anew_after_it()
    {
        Entries within = new Entries().Reading("pulse 132").Recheck(VitalSign.Pulse, "1").Reading("pulse 134", recheck: true).After(TimeSpan.FromMinutes(58)).Reading("pulse 80");
        Entries after = new Entries().Reading("pulse 132").Recheck(VitalSign.Pulse, "1").Reading("pulse 134", recheck: true).After(TimeSpan.FromMinutes(59)).Reading("pulse 80");

        Pulse(within).RechecksAsked.ShouldBe(1);
        Pulse(after).RechecksAsked.ShouldBe(0);
        Pulse(after).Readings.ShouldHaveSingleItem();
    }

    [Fact]
    public void An_undone_reading_lets_its_recheck_wait_again() =>
        Pulse(new Entries().Reading("pulse 132").Recheck(VitalSign.Pulse, "1").Reading("pulse 80", recheck: true).InError("3"))
            .Waiting.ShouldNotBeNull().Id.ShouldBe("2");

    [Fact]
    public void An_undone_recheck_is_not_counted()
    {
        RecheckChain chain = Pulse(new Entries().Reading("pulse 132").Recheck(VitalSign.Pulse, "1").InError("2"));

        chain.Waiting.ShouldBeNull();
        chain.RechecksAsked.ShouldBe(0);
    }

    [Fact]
    public void An_amended_reading_takes_the_place_of_the_first_and_its_recheck_falls_away()
    {
        RecheckChain chain = Pulse(new Entries().Reading("pulse 132").Recheck(VitalSign.Pulse, "1").Reading("pulse 132 seconds 60", amends: "1"));

        chain.Readings.Select(r => r.Id).ShouldBe(["3"]);
        chain.RechecksAsked.ShouldBe(0);
        chain.Waiting.ShouldBeNull();
    }

    [Fact]
    public void A_temperature_that_is_due_again_in_four_hours_waits_for_later()
    {
        Entries entries = new Entries().Reading("temperature 99.2 F mouth").Recheck(VitalSign.Temperature, "1", minutes: 240);

        RecheckChains.Waiting(entries.All).ShouldHaveSingleItem().WaitsForLater.ShouldBeTrue();
    }

    [Fact]
    public void A_recheck_that_was_never_done_waits_however_long_ago_it_was_due()
    {
        Entries entries = new Entries().Reading("pulse 132").Recheck(VitalSign.Pulse, "1").After(TimeSpan.FromDays(3)).Reading("temperature 98.6 F");

        RecheckChains.Waiting(entries.All).ShouldHaveSingleItem().Sign.ShouldBe(VitalSign.Pulse);
    }

    [Fact]
    public void A_recheck_waits_no_more_once_a_nurse_has_acknowledged_its_report()
    {
        Entries entries = new Entries().Reading("pulse 132").Recheck(VitalSign.Pulse, "1").Report(VitalSign.Pulse, "1");
        RecheckChains.Waiting(entries.All).ShouldHaveSingleItem();

        RecheckChains.Waiting(entries.Acknowledged("3").All).ShouldBeEmpty();
    }

    [Fact]
    public void The_acknowledgement_of_another_report_ends_no_recheck()
    {
        Entries entries = new Entries().Reading("bp 190/90").Report(VitalSign.BloodPressure, "1").Reading("pulse 132").Recheck(VitalSign.Pulse, "3").Acknowledged("2");

        RecheckChains.Waiting(entries.All).ShouldHaveSingleItem().Sign.ShouldBe(VitalSign.Pulse);
    }

    [Fact]
    public void A_recheck_waits_no_more_where_its_reading_was_entered_in_error() =>
        RecheckChains.Waiting(new Entries().Reading("pulse 132").Recheck(VitalSign.Pulse, "1").InError("1").All).ShouldBeEmpty();

    [Fact]
    public void A_value_measured_before_and_entered_late_is_no_recheck()
    {
        Entries entries = new Entries().Reading("pulse 132").Recheck(VitalSign.Pulse, "1").ReadingOf(TimeSpan.FromMinutes(-40), "pulse 80");

        RecheckChains.Waiting(entries.All).ShouldHaveSingleItem();
    }

    [Fact]
    public void The_one_that_can_be_done_first_is_in_front()
    {
        Entries entries = new Entries().Reading("bp 190/90").Recheck(VitalSign.BloodPressure, "1", minutes: 5).Reading("pulse 132").Recheck(VitalSign.Pulse, "3");

        RecheckChains.Waiting(entries.All).Select(c => c.Sign).ShouldBe([VitalSign.Pulse, VitalSign.BloodPressure]);
    }

    /// <summary>What a conversation did is what the journal says of it.</summary>
    [Fact]
    public void A_conversation_leaves_its_rechecks_in_the_journal()
    {
        IRulebook rules = Rulebook.Load().Rulebook.ShouldNotBeNull();
        Talk talk = Talk.WithMary(rules: rules).Go("blood pressure one eighty six over eighty eight", "one eight six over eight eight", "no");

        RecheckChain chain = RecheckChains.Waiting(talk.Journal).ShouldHaveSingleItem();

        chain.Resident.ShouldBe("r-12b");
        chain.Waiting.ShouldNotBeNull().Rule.ShouldBe("pressure.high");
        chain.Waiting.DueAt.ShouldBe(chain.Waiting.At + TimeSpan.FromMinutes(5));
    }

    private static RecheckChain Pulse(Entries entries) => RecheckChains.Of(entries.All, Entries.Resident)[VitalSign.Pulse];
}
