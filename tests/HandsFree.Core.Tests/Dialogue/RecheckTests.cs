using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>The rest before a recheck is kept. Source: safety.md 1 and the rules' own time (clinical-rules 5.1: five minutes before a
/// pressure, AHA 2005).</summary>
public sealed class RecheckTests
{
    private static readonly string[] High = ["blood pressure one eighty five over ninety", "one eight five over nine zero"];

    [Fact]
    public void A_recheck_before_its_time_is_said_taken_as_early_and_settles_nothing()
    {
        Talk talk = Talk.WithMary().Go(High).Go("blood pressure one fifty over eighty four");
        talk.Said.ShouldBe("Blood pressure, one five zero over eight four, too early. Say the number again, digit by digit.");
        talk.Go("one five zero over eight four").Said.ShouldStartWith("Saved. Blood pressure again in five minutes.");
        ReadingRecorded early = talk.Journal.OfType<ReadingRecorded>().Last();
        (early.IsRecheck, early.Confirmed.Reading.How.TooEarly).ShouldBe((false, true));
        talk.State.Kind.ShouldBe(StateKind.AwaitingRecheck);
        RecheckChains.Waiting(talk.Journal).ShouldHaveSingleItem().Sign.ShouldBe(VitalSign.BloodPressure);
        talk.Go("next resident").Journal.OfType<ReportOpened>().ShouldHaveSingleItem();
    }

    [Fact]
    public void A_recheck_in_its_time_settles_it()
    {
        Talk talk = Talk.WithMary().Go(High).Go("(after 5 min)", "one two four over eight four", "yes");
        talk.Said.ShouldBe("Saved.");
        talk.Journal.OfType<ReadingRecorded>().Last().IsRecheck.ShouldBeTrue();
        talk.Go("next resident").Journal.OfType<ReportOpened>().ShouldBeEmpty();
    }

    [Fact]
    public void A_recheck_without_a_rest_is_never_too_early() =>
        Talk.WithMary().Go("pulse forty four", "four four", "seventy two", "yes").Journal.OfType<ReadingRecorded>().Last().IsRecheck.ShouldBeTrue();

    [Fact]
    public void After_a_restart_the_early_reading_still_settles_nothing()
    {
        Talk talk = Talk.WithMary().Go(High).Go("one five two over eight four", "one five two over eight four", "yes").Interrupted();
        talk.Go("room twelve bed b", "yes", "march third").State.Kind.ShouldBe(StateKind.AwaitingRecheck);
    }

    [Fact]
    public void A_danger_value_before_its_time_is_told_at_once() =>
        Talk.WithMary(rules: new TestRules()).Go("oxygen eighty four", "eight four").Go("pulse thirty eight", "three eight").Said.ShouldContain("Count sixty seconds.");

    [Fact]
    public void An_early_count_marks_its_own_sign_alone_as_a_guess()
    {
        Talk talk = Talk.WithMary().Go("count", "(played)", "seventy", "cancel", "oxygen ninety six", "yes", "pulse seventy", "yes");
        talk.Journal.OfType<ReadingRecorded>().Select(r => (r.Confirmed.Reading.Value.Sign, r.Confirmed.Reading.How.SaidAsGuessFirst))
            .ShouldBe([(VitalSign.OxygenSaturation, false), (VitalSign.Pulse, true)]);
    }

    [Fact]
    public void A_guess_marks_the_sign_that_it_named_and_else_any()
    {
        Talk named = Talk.WithMary().Go("pulse about seventy", "oxygen ninety six", "yes");
        named.Journal.OfType<ReadingRecorded>().ShouldHaveSingleItem().Confirmed.Reading.How.SaidAsGuessFirst.ShouldBeFalse();
        Talk unnamed = Talk.WithMary().Go("about ninety six", "oxygen ninety six", "yes");
        unnamed.Journal.OfType<ReadingRecorded>().ShouldHaveSingleItem().Confirmed.Reading.How.SaidAsGuessFirst.ShouldBeTrue();
    }
}
