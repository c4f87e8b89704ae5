using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>The round: leading, rest, counts, machine, cuff, not taken, interruption. Sources are the sections of safety.md.</summary>
public sealed class RoundTests
{
    [Fact]
    public void The_silent_aide_is_led_and_the_bare_number_is_enough() // Source: safety.md 8.
    {
        Talk talk = Talk.WithMary().Go("(nothing)");
        talk.Said.ShouldBe("Temperature?");
        talk.Go("nine eight point six").Said.ShouldBe("Temperature, nine eight point six.");
    }

    [Fact]
    public void Private_names_the_next_reading_at_once() =>
        Talk.WithMary().Go("private", "nine eight point six", "yes", "private").Said.ShouldBe("Pulse?");

    [Fact]
    public void A_number_without_a_name_that_was_not_asked_for_is_no_value() =>
        Talk.WithMary().Go("(typed private)", "next", "pulse seventy two", "yes").State.Kind.ShouldBe(StateKind.Ready);

    [Fact]
    public void The_rest_runs_from_the_identification_and_its_end_is_said() // Source: safety.md 1; five minutes: clinical-rules 5.1 (AHA 2005).
    {
        Talk talk = Talk.WithMary();
        talk.Transcript.ShouldContain("[timer rest, 300 s]");
        talk.Go("(timer rest)").Said.ShouldBe("The rest is over. Blood pressure?");
        talk.Go("one two zero over eight zero").Said.ShouldBe("Blood pressure, one two zero over eight zero.");
    }

    [Fact]
    public void While_the_rest_runs_the_other_readings_are_asked_for_first() // Source: safety.md 1.
    {
        Talk talk = Talk.WithMary().Go(
            "temperature ninety eight six", "yes", "pulse seventy two", "yes", "respirations one six", "yes", "(nothing)");
        talk.Said.ShouldBe("Oxygen?");
        talk.Go("nine seven", "yes", "(nothing)").Said.ShouldBe("Blood pressure in five minutes.");
    }

    [Fact]
    public void Was_resting_satisfies_the_rest() // Source: safety.md 1.
    {
        Talk talk = Talk.WithMary().Go("she was resting");
        talk.Said.ShouldBe("Noted. The rest is done.");
        talk.LastEffects.ShouldContain(new Effect.StopTimer("rest"));
    }

    [Fact]
    public void A_pressure_before_the_end_of_the_rest_is_taken() // Source: safety.md 1: never a dead wait.
        => Talk.WithMary().Go("blood pressure one two zero over eight zero").State.Kind.ShouldBe(StateKind.AwaitingConfirmation);

    [Fact]
    public void Breaths_are_counted_straight_after_the_pulse_announced_by_a_tone_alone_and_both_are_read_back_after() // Source: safety.md 2, 10.
    {
        Talk talk = Talk.WithMary().Go("count", "(played)", "(timer count)", "forty four");
        talk.State.Kind.ShouldBe(StateKind.Counting);
        talk.LastEffects.OfType<Effect.Say>().ShouldBeEmpty();
        talk.LastEffects.ShouldContain(new Effect.Play(Tone.CountBegins));
        talk.LastEffects.ShouldContain(new Effect.StartTimer("count", TimeSpan.FromSeconds(60)));
        talk.Go("(played)", "(timer count)");
        talk.LastEffects.OfType<Effect.Say>().ShouldBeEmpty();
        talk.Go("one six").Said.ShouldBe("Pulse, four four in thirty seconds, makes eight eight.");
        talk.Go("yes").Said.ShouldBe("Respirations, one six in sixty seconds.");
        talk.Go("yes").Said.ShouldBe("Saved.");
        talk.Journal.OfType<ReadingRecorded>().Select(r => r.Confirmed.Reading.How.CountedSeconds).ShouldBe([30, 60]);
    }

    [Fact]
    public void A_pulse_that_needs_words_is_read_back_before_breaths_are_counted() =>
        Talk.WithMary().Go("count", "(played)", "(timer count)", "fifty nine").Said.ShouldStartWith("Pulse, five nine in thirty seconds, makes one one eight.");

    [Fact]
    public void A_danger_value_of_breaths_calls_for_the_light_before_the_pulse_is_read_back() // Source: safety.md 15.
    {
        Talk talk = Talk.WithMary().Go("count", "(played)", "(timer count)", "forty four", "(played)", "(timer count)", "three six");
        talk.LastEffects.OfType<Effect.Say>().Select(s => s.Text).ShouldBe(
            ["Use the call light now.", "Pulse, four four in thirty seconds, makes eight eight."]);
    }

    [Fact]
    public void A_pulse_that_is_held_is_not_lost_where_the_breaths_are_not_counted()
    {
        Talk.WithMary().Go("count", "(played)", "(timer count)", "forty four", "cancel").Said.ShouldBe("Pulse, four four in thirty seconds, makes eight eight.");
        Talk talk = Talk.WithMary().Go("count", "(played)", "(timer count)", "forty four", "stop");
        talk.Journal.OfType<AttemptDiscarded>().ShouldHaveSingleItem().Why.ShouldBe("stopped");
        talk.Journal.OfType<LeftOpen>().Select(e => e.Sign).ShouldContain(VitalSign.Pulse);
    }

    [Fact]
    public void A_number_before_the_time_is_over_is_a_guess()
    {
        Talk talk = Talk.WithMary().Go("count", "(played)", "forty");
        talk.Said.ShouldBe("Count until the tone.");
        talk.Journal.OfType<AttemptDiscarded>().ShouldHaveSingleItem().Why.ShouldBe("before the count was over");
        talk.Go("cancel", "pulse eight zero", "yes").Journal.OfType<ReadingRecorded>().Single().Confirmed.Reading.How.SaidAsGuessFirst.ShouldBeTrue();
    }

    [Fact]
    public void A_machine_is_said_once_for_the_round() // Source: safety.md 2.
    {
        Talk talk = Talk.WithMary().Go("machine", "pulse seventy two");
        talk.Said.ShouldBe("Pulse, seven two.");
        talk.Go("yes", "next resident", "room four", "yes", "january ninth", "pulse seventy four", "yes");
        talk.Journal.OfType<ReadingRecorded>().ShouldAllBe(r => r.Confirmed.Reading.How.Machine);
        talk.Go("by hand", "pulse seventy six", "yes").Journal.OfType<ReadingRecorded>().Last().Confirmed.Reading.How.Machine.ShouldBeFalse();
    }

    [Fact]
    public void With_the_stethoscope_in_the_ears_nothing_is_said_until_the_value() // Source: safety.md 3.
    {
        Talk talk = Talk.WithMary().Go("pressure");
        talk.LastEffects.OfType<Effect.Say>().ShouldBeEmpty();
        talk.Go("(nothing)").LastEffects.OfType<Effect.Say>().ShouldBeEmpty();
        talk.Go("(timer rest)").LastEffects.OfType<Effect.Say>().ShouldBeEmpty();
        talk.Go("one two zero over eight zero").Said.ShouldBe("Blood pressure, one two zero over eight zero.");
    }

    [Fact]
    public void Teens_and_tens_are_always_said_in_digits() // Source: clinical-rules 7.3; safety.md 11.
    {
        Talk.WithMary().Go("blood pressure one eighteen over seventy six").State.Kind.ShouldBe(StateKind.AwaitingSayingAgain);
        Talk.WithMary().Go("blood pressure one one eight over seven six").State.Kind.ShouldBe(StateKind.AwaitingConfirmation);
        Talk.WithMary().Go("blood pressure one twenty over eighty").State.Kind.ShouldBe(StateKind.AwaitingConfirmation);
    }

    [Fact]
    public void Far_from_usual_is_said_again_and_near_to_usual_takes_no_doubt_away() // Source: safety.md 14; her usual pulse is 72.
    {
        Talk.WithMary().Go("pulse one zero four").State.Kind.ShouldBe(StateKind.AwaitingSayingAgain);
        Talk.WithMary().Go("(margin 0.3 pulse seventy two | pulse eighty two)").Said.ShouldBe("Not sure. Say the digits, one by one.");
    }

    [Fact]
    public void Two_hearings_decide_together_and_two_that_contradict_each_other_do_not()
    {
        Talk agree = Talk.WithMary().Go("(margin 0.5 pulse seventy two | pulse eighty two)", "(margin 0.5 seven two | eight two)");
        agree.Said.ShouldBe("Pulse, seven two.");
        Talk differ = Talk.WithMary().Go("(margin 0.5 pulse seventy two | pulse eighty two)", "(margin 0.5 eight two | seven two)");
        differ.Said.ShouldStartWith("Not sure.");
    }

    [Fact]
    public void Who_is_asleep_is_asked_again_later_and_who_refused_is_not()
    {
        Talk talk = Talk.WithMary().Go(
            "pulse asleep", "yes", "yes", "temperature refused", "yes", "next resident", "room twelve bed b", "yes", "march third");
        talk.Said.ShouldBe("Ready. Still to take: pulse.");
        talk.Go("goodbye").Said.ShouldBe("Room 12 bed B: four not taken yet, temperature refused, pulse asleep. Goodbye.");
    }

    [Fact]
    public void Isolated_is_a_reason() =>
        Talk.WithMary().Go("isolated").Said.ShouldBe("All that is open, isolated.");

    [Fact] // Source: safety.md 7.
    public void Rooms_under_isolation_come_last_with_all_who_share_them()
    {
        var roster = new Roster([.. TestHome.Roster.Residents.Select(r => r.Id == "r-12b" ? r with { Isolation = "contact" } : r)]);
        new Talk(roster: roster).Go("who is next").Said
            .ShouldBe("Next: room 4, room 7 and room 12 bed A, isolation room. 1 more.");
        new Talk(roster: roster).Go("room four", "yes", "january ninth", "not taken", "yes", "next resident", "room seven", "yes", "february twenty ninth", "not taken", "yes", "next resident", "who is next").Said
            .ShouldBe("Next: room 12 bed A, isolation room and room 12 bed B, contact isolation.");
    }

    [Fact]
    public void The_round_has_an_order() =>
        Talk.WithMary().Go("who is next").Said.ShouldBe("Next: room 4, room 7 and room 12 bed A. 1 more.");

    [Fact]
    public void An_interrupted_round_goes_on_with_its_rechecks_and_their_count_and_asks_for_identity_again() // Source: safety.md 6.
    {
        Talk talk = Talk.WithMary().Go("temperature one hundred one point two", "one zero one point two").Interrupted("aide-2");
        talk.Said.ShouldBe("The round goes on. Recheck waits: room 12 bed B, temperature. Room and bed?");
        talk.Go("room twelve bed b", "yes", "march third").Said.ShouldBe("Ready. Let the resident rest, then measure.");
        talk.Transcript.ShouldContain("[timer recheck temperature");
        talk.Go("(after 6 min)", "one hundred one point two", "one zero one point two");
        talk.Journal.OfType<RecheckAsked>().ShouldHaveSingleItem();
        talk.Journal.OfType<ReportOpened>().ShouldHaveSingleItem().Readings.Count.ShouldBe(2);
    }

    [Fact]
    public void What_was_not_confirmed_before_the_interruption_is_gone() =>
        Talk.WithMary().Go("pulse seventy two").Interrupted().Go("room twelve bed b", "yes", "march third", "(nothing)")
            .Journal.OfType<ReadingRecorded>().ShouldBeEmpty();

    [Fact]
    public void What_was_saved_before_the_interruption_is_not_asked_for_again_and_can_be_undone()
    {
        Talk talk = Talk.WithMary().Go("temperature ninety eight six", "yes").Interrupted().Go("room twelve bed b", "yes", "march third", "(nothing)");
        talk.Said.ShouldBe("Pulse?");
        talk.Go("undo", "yes").Journal.OfType<EnteredInError>().ShouldHaveSingleItem();
    }

    [Fact]
    public void A_round_that_was_ended_does_not_go_on() =>
        Talk.WithMary().Go("temperature ninety eight six", "yes", "goodbye").Interrupted().Said.ShouldBe("Room and bed?");
}
