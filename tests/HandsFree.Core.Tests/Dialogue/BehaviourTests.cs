using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue;

public sealed class BehaviourTests
{
    [Fact]
    public void A_temperature_of_45_is_refused_and_the_number_is_repeated() =>
        Talk.WithMary().Go("temperature forty five").Said.ShouldStartWith("Temperature, four five Celsius, is not possible.");

    [Fact]
    public void A_number_that_no_temperature_can_be_is_repeated_digit_by_digit() =>
        Talk.WithMary().Go("temperature seventy").Said.ShouldBe("Temperature, seven zero, is not possible. Say the temperature.");

    [Fact]
    public void Ninety_eight_six_is_98_point_6_and_never_986() // Source: clinical-rules 7.4, R-13.
        => Talk.WithMary().Go("temperature ninety eight six").Said.ShouldBe("Temperature, nine eight point six.");

    [Fact]
    public void Silence_after_a_read_back_confirms_nothing() // Source: clinical-rules 7.4, R-12.
        => Talk.WithMary().Go("pulse seventy two", "(nothing)", "(nothing)", "(nothing)", "(nothing)").Journal.OfType<ReadingRecorded>().ShouldBeEmpty();

    [Fact]
    public void A_no_discards_and_keeps_the_attempt_for_the_audit() // Source: clinical-rules 7.4, R-11.
    {
        Talk talk = Talk.WithMary().Go("pulse seventy two", "no");
        talk.Said.ShouldBe("Say the pulse.");
        talk.Journal.OfType<AttemptDiscarded>().ShouldHaveSingleItem().Reading!.Value.ShouldBe(HeartRate.FromPerMinute(72));
    }

    [Fact]
    public void A_refused_value_comes_back_only_digit_by_digit() // Source: safety.md 11.
    {
        Talk talk = Talk.WithMary().Go("pulse seventy two", "no", "seventy two");
        talk.Said.ShouldBe("Not sure. Say the digits, one by one.");
        talk.Go("seven two").Said.ShouldBe("Pulse, seven two.");
        talk.Go("yes").Said.ShouldBe("Saved.");
    }

    [Fact]
    public void Thirteen_breaths_said_as_a_word_are_said_again_because_thirty_would_be_reported()
    {
        Talk.WithMary().Go("respirations thirteen").State.Kind.ShouldBe(StateKind.AwaitingSayingAgain);
        Talk.WithMary().Go("respirations one three").State.Kind.ShouldBe(StateKind.AwaitingConfirmation);
    }

    [Fact]
    public void A_close_runner_up_that_would_be_reported_asks_for_a_second_saying() =>
        Talk.WithMary().Go("(margin 1.5 pulse sixty four | pulse forty four)").State.Kind.ShouldBe(StateKind.AwaitingSayingAgain);

    [Fact]
    public void Another_second_saying_takes_the_first_ones_place_and_is_read_back()
    {
        Talk talk = Talk.WithMary().Go("pulse forty four", "six four");
        talk.Said.ShouldBe("That is another number. Pulse, six four. Yes or no?");
        talk.Go("yes").Journal.OfType<ReadingRecorded>().ShouldHaveSingleItem().Confirmed.Reading.Value.ShouldBe(HeartRate.FromPerMinute(64));
    }

    [Fact]
    public void A_yes_that_is_much_quieter_than_the_reading_is_asked_again() // Source: safety.md 4.
    {
        Talk talk = Talk.WithMary().Go("pulse seventy two", "(quiet yes)");
        talk.Said.ShouldStartWith("Was that you?");
        talk.Go("yes").Said.ShouldBe("Saved.");
    }

    [Fact]
    public void Speech_that_is_no_reading_is_ignored_in_silence_while_nothing_was_asked() // Source: safety.md 4.
    {
        Talk talk = Talk.WithMary().Go("(mumble)");
        talk.LastEffects.ShouldBeEmpty();
    }

    [Fact]
    public void The_silent_aide_is_led_once() =>
        Talk.WithMary().Go("(nothing)").Said.ShouldBe("Temperature?");

    [Fact]
    public void A_short_pause_goes_on_at_the_same_question_and_reads_back_again() =>
        Talk.WithMary().Go("pulse seventy two", "pause", "(after 2 min)", "continue").Said.ShouldBe("Pulse, seven two.");

    [Fact]
    public void After_a_long_pause_identity_is_asked_again() =>
        Talk.WithMary().Go("pulse seventy two", "pause", "(after 11 min)", "continue").State.Kind.ShouldBe(StateKind.AwaitingName);

    [Fact]
    public void A_call_for_help_is_told_that_the_program_cannot_call() // Source: safety.md 16.
        => Talk.WithMary().Go("call the nurse").Said.ShouldBe("I cannot call. Use the call light.");

    [Fact]
    public void A_wrong_birthday_gives_no_readings()
    {
        Talk talk = new Talk().Go("room twelve bed b", "yes", "march fourth", "april first", "band one two three");
        talk.State.Kind.ShouldBe(StateKind.AwaitingRoom);
        talk.Journal.OfType<IdentificationFailed>().ShouldHaveSingleItem();
        talk.Go("pulse seventy two").Said.ShouldNotContain("seven two");
    }

    [Fact]
    public void A_room_of_two_beds_is_asked_for_the_bed() =>
        new Talk().Go("room twelve").Said.ShouldStartWith("Room 12 has bed A and bed B. Which bed?");

    [Fact]
    public void A_room_without_anybody_is_said() => new Talk().Go("room ninety").Said.ShouldStartWith("Nobody is on the list in room 90.");

    [Fact]
    public void Residents_of_the_same_name_raise_an_alert() =>
        new Talk().Go("room seven").Said.ShouldBe("Careful, two residents have this name. Ann Olsen? Look first.");

    [Fact]
    public void Something_said_later_about_a_saved_reading_amends_it_after_its_own_yes()
    {
        Talk talk = Talk.WithMary().Go("temperature ninety eight six", "yes", "ear");
        talk.Said.ShouldBe("Temperature, nine eight point six, ear.");
        ReadingRecorded[] readings = [.. talk.Go("yes").Journal.OfType<ReadingRecorded>()];
        readings[1].Amends.ShouldBe(readings[0].Id);
        readings[1].Confirmed.By.MeasuredAt.ShouldBe(readings[0].Confirmed.By.MeasuredAt);
        PastReadings.Standing(talk.Journal).ShouldHaveSingleItem().Id.ShouldBe(readings[1].Id);
    }

    [Fact]
    public void Something_said_before_a_reading_is_kept_for_it() =>
        Talk.WithMary().Go("left arm", "blood pressure one two zero over eight zero").Said.ShouldBe("Blood pressure, one two zero over eight zero, left arm.");

    [Fact]
    public void What_was_said_as_a_guess_first_is_marked_unless_it_was_counted() // Source: safety.md 12.
    {
        Mark(Talk.WithMary().Go("pulse about seventy", "pulse seventy", "yes")).ShouldBeTrue();
        Mark(Talk.WithMary().Go("pulse about seventy", "count", "(played)", "(timer count)", "thirty five", "cancel", "yes")).ShouldBeFalse();

        static bool Mark(Talk talk) => talk.Journal.OfType<ReadingRecorded>().ShouldHaveSingleItem().Confirmed.Reading.How.SaidAsGuessFirst;
    }

    [Fact]
    public void An_uneven_pulse_is_counted_for_sixty_seconds_from_the_beginning()
    {
        Talk talk = Talk.WithMary().Go("count", "(played)", "uneven");
        talk.Said.ShouldBe("Uneven. Count the pulse for sixty seconds, from the tone.");
        talk.Go("(played)", "(timer count)", "eighty one", "cancel").Said.ShouldBe("Pulse, eight one in sixty seconds, uneven.");
    }

    [Fact]
    public void Could_not_obtain_twice_is_reported_now() // Source: safety.md 17.
    {
        Talk talk = Talk.WithMary().Go("pulse could not obtain", "yes", "pulse could not obtain", "yes");
        talk.Said.ShouldBe("Saved. Tell the nurse before you leave.");
    }

    [Fact]
    public void A_worry_is_a_report_without_a_number() // Source: safety.md 18.
    {
        Talk talk = Talk.WithMary().Go("i'm worried about her", "yes");
        talk.Journal.OfType<ReportOpened>().ShouldHaveSingleItem().Sign.ShouldBeNull();
    }

    [Fact] // Source: safety.md 6; clinical-rules 8.4, E-11.
    public void A_late_entry_is_measured_before_the_stop_and_marked()
    {
        Talk talk = Talk.WithMary().Go("stop", "(after 3 min)", "continue", "yes", "march third", "pulse seventy two", "no", "yes");
        Attribution by = talk.Journal.OfType<ReadingRecorded>().ShouldHaveSingleItem().Confirmed.By;
        by.Late.ShouldBeTrue();
        by.MeasuredAt.ShouldBeLessThan(by.EnteredAt.AddMinutes(-3));
    }

    [Theory] // Source: safety.md 6.
    [InlineData("yes", false)]
    [InlineData("before", true)]
    [InlineData("no", true)]
    public void Taken_now_or_before_is_answered_with_these_words_too(string answer, bool late)
    {
        Talk talk = Talk.WithMary().Go("stop", "(after 3 min)", "continue", "yes", "march third", "pulse seventy two");
        talk.Said.ShouldBe("Taken since you came back? Say yes or before.");
        talk.Go(answer, "yes").Journal.OfType<ReadingRecorded>().ShouldHaveSingleItem().Confirmed.By.Late.ShouldBe(late);
    }

    [Fact]
    public void A_typed_value_is_read_back_too_and_needs_its_yes() =>
        Talk.WithMary().Go("(typed pulse seventy two)").State.Kind.ShouldBe(StateKind.AwaitingConfirmation);

    [Fact] // Source: clinical-rules 8.4, E-14: nothing is deleted; what is undone stays, marked as entered in error.
    public void An_undone_report_is_in_error_with_its_reading()
    {
        Talk talk = Talk.WithMary().Go("respirations forty", "four zero", "undo", "yes");
        string[] gone = [.. talk.Journal.OfType<EnteredInError>().Select(e => e.Event)];
        gone.ShouldBe([.. talk.Journal.Where(e => e is ReadingRecorded or ReportOpened).Select(e => e.Id)]);
    }

    [Fact]
    public void Options_lists_the_samples_of_the_grammar_in_force() =>
        Talk.WithMary(new DialogueSettings { SamplePhrases = l => [$"{l.Kind} one", "two"] }).Go("options").Said.ShouldBe("You can say: Readings one or two.");

    [Fact]
    public void The_screen_shows_large_digits_and_room_and_bed_but_no_name() =>
        Talk.WithMary().Go("blood pressure one one eight over seven six").State.Screen
            .ShouldBe(new ScreenView("Room 12 bed B", "blood pressure, mmHg", "118/76", "yes or no"));

    [Fact]
    public void The_attempts_of_a_failed_batch_are_written_with_the_next()
    {
        Talk talk = Talk.WithMary().Go("pulse seventy two", "(saving fails)", "no");
        talk.Said.ShouldBe("The record does not work. Tell your supervisor.");
        talk.Go("(saving works)", "seven four", "yes");
        talk.Journal.OfType<AttemptDiscarded>().ShouldHaveSingleItem();
        talk.Journal.OfType<ReadingRecorded>().ShouldHaveSingleItem();
    }
}
