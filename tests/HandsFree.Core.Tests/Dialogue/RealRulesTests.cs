using HandsFree.Core.Journal;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Rules;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>Conversations under the program's own rules.</summary>
public sealed class RealRulesTests
{
    private static readonly IRulebook Rules = Rulebook.Load().Rulebook.ShouldNotBeNull();

    [Fact]
    public void A_whole_set_within_limits_is_saved_without_a_question() => Golden.Match(
        Talk.WithMary(rules: Rules).Go(
            "temperature ninety eight six by mouth", "yes", "pulse seventy two", "yes", "respirations eighteen", "yes",
            "blood pressure one eighteen over seventy six left arm sitting", "one one eight over seven six", "oxygen ninety seven on room air", "yes", "goodbye").Transcript);

    [Fact]
    public void Respirations_of_thirty_are_said_again_and_reported_now()
    {
        // Source: clinical-rules 7.4, R-06.
        Talk talk = Talk.WithMary(rules: Rules).Go("respirations thirty");
        talk.Said.ShouldBe("Respirations, three zero. Say the number again, digit by digit.");
        talk.Go("three zero", "respirations thirty in sixty seconds", "three zero");
        talk.Journal.OfType<ReportOpened>().ShouldHaveSingleItem().Urgency.ShouldBe(Core.Reports.ReportUrgency.Now);
    }

    [Fact]
    public void A_pulse_of_sixteen_is_asked_again_and_the_number_is_repeated()
    {
        // Source: clinical-rules 7.4, R-14.
        Talk talk = Talk.WithMary(rules: Rules).Go("pulse sixteen");
        talk.Said.ShouldStartWith("Pulse, one six, is not possible.");
        talk.Go("six zero").Said.ShouldBe("Pulse, six zero.");
    }

    [Fact]
    public void A_fast_pulse_asks_for_breathlessness_before_it_decides()
    {
        // Source: safety.md, defaults for the pulse.
        Talk talk = Talk.WithMary(rules: Rules).Go("pulse one sixteen", "one one six");
        talk.Said.ShouldBe("Short of breath?");
        talk.Go("yes").Journal.OfType<ReadingRecorded>().ShouldHaveSingleItem().Decision.Outcome.ShouldBe(Outcome.ReportNow);
    }

    [Fact]
    public void A_symptom_is_asked_for_once_at_a_bed_and_not_where_the_report_is_open_already()
    {
        Talk talk = Talk.WithMary(rules: Rules).Go("pulse one fourteen", "one one four");
        talk.Said.ShouldBe("Short of breath?");
        talk.Go("no", "pulse one sixteen", "one one six").Said.ShouldNotBe("Short of breath?");
        Talk open = Talk.WithMary(rules: Rules).Go("pulse one fourteen", "one one four", "yes");
        open.Journal.OfType<ReportOpened>().ShouldHaveSingleItem().Urgency.ShouldBe(Core.Reports.ReportUrgency.Now);
        Talk next = open.Interrupted().Go("room twelve bed b", "yes", "march third", "pulse one sixteen", "one one six");
        next.Transcript.ShouldNotContain("tool: Short of breath?");
        next.Journal.OfType<ReportOpened>().ShouldHaveSingleItem();
    }

    [Theory] // Source: safety.md 2.
    [InlineData("pulse forty eight", "four eight")]
    [InlineData("pulse one hundred four", "one zero four")]
    [InlineData("pulse seventy two irregular", "seven two")]
    public void A_machines_pulse_that_is_uneven_or_outside_the_limits_is_counted(string pulse, string confirmed)
    {
        Talk talk = Talk.WithMary(rules: Rules).Go("machine", pulse, confirmed);
        talk.Said.ShouldBe("Saved. Count the pulse for a full 60 seconds.");
        talk.Go("count").Said.ShouldEndWith("Count the pulse for sixty seconds, from the tone.");
        talk.Go("(played)", "(timer count)", "seventy four");
        Reading counted = talk.Go("cancel", "yes").Journal.OfType<ReadingRecorded>().Last().Confirmed.Reading;
        (counted.Value, counted.How.Machine, counted.How.CountedSeconds).ShouldBe((HeartRate.FromPerMinute(74), false, 60));
    }

    [Fact]
    public void An_even_pulse_of_a_machine_within_limits_is_not_counted() =>
        Talk.WithMary(rules: Rules).Go("machine", "pulse seventy two", "yes").Said.ShouldBe("Saved.");

    [Fact]
    public void An_arm_that_must_not_be_used_is_refused()
    {
        Talk talk = new Talk(rules: Rules).Go("room four", "yes", "january ninth");
        talk.Said.ShouldBe("Ready. Do not use the left arm.");
        talk.Go("blood pressure one two zero over eight zero left arm").Said.ShouldBe("The left arm is not to be used: fistula. Measure on the other arm. Say the blood pressure.");
        talk.Go("one two zero over eight zero").Said.ShouldBe("Blood pressure, one two zero over eight zero.");
    }
}
