using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>Whole conversations, held word for word.</summary>
public sealed class ConversationTests
{
    [Fact]
    public void A_resident_is_identified_by_name_and_birthday_and_her_readings_are_saved_after_yes() => Golden.Match(
        new Talk().Go(
            "room twelve bed b", "yes", "march third", "pulse seventy two", "yes", "temperature ninety eight six by mouth", "yes",
            "blood pressure one eighteen over seventy six left arm", "one one eight over seven six", "oxygen ninety two on two liters", "yes", "goodbye").Transcript);

    [Fact]
    public void A_slip_is_corrected_in_one_breath_and_the_correction_needs_its_own_yes() => Golden.Match(
        Talk.WithMary().Go("pulse eighty eight", "no eighty two", "yes", "read back").Transcript);

    [Fact]
    public void A_recheck_that_comes_back_normal_is_no_report() => Golden.Match(
        Talk.WithMary().Go("pulse forty four", "four four", "seventy two", "yes", "next resident").Transcript);

    [Fact]
    public void A_recheck_that_does_not_come_back_normal_becomes_a_report_with_both_readings() => Golden.Match(
        Talk.WithMary().Go("pulse forty four", "four four", "forty six", "four six", "goodbye").Transcript);

    [Fact]
    public void A_recheck_that_was_not_done_is_reported_when_the_aide_leaves() => Golden.Match(
        Talk.WithMary().Go("temperature one hundred one point two", "one zero one point two", "respirations one six", "yes", "next resident").Transcript);

    [Fact]
    public void A_danger_value_calls_for_the_light_before_the_read_back() => Golden.Match(
        Talk.WithMary().Go("oxygen eighty two", "eight two", "eight three", "eight three").Transcript);

    [Fact]
    public void A_pulse_is_counted_with_tones_and_read_back_as_counted_and_as_made() => Golden.Match(
        Talk.WithMary().Go("count", "(played)", "(timer count)", "forty four", "yes", "count", "(timer count)", "sixteen", "yes").Transcript);

    [Fact]
    public void A_guess_is_refused_and_what_is_said_again_without_a_count_is_marked() => Golden.Match(
        Talk.WithMary().Go("pulse about seventy", "pulse seventy", "yes").Transcript);

    [Fact]
    public void Three_tries_leave_the_value_open_and_goodbye_names_it() => Golden.Match(
        Talk.WithMary().Go("pulse seventy two", "(nothing)", "(mumble)", "(part)", "goodbye").Transcript);

    [Fact]
    public void After_a_stop_identity_is_asked_again_and_the_first_reading_may_be_late() => Golden.Match(
        Talk.WithMary().Go("pulse seventy two", "stop", "continue", "yes", "band four seven one one", "pulse seventy two", "no", "yes", "respirations one six", "yes", "yes").Transcript);

    [Fact]
    public void Undo_marks_the_last_saved_as_entered_in_error_after_a_yes() => Golden.Match(
        Talk.WithMary().Go("pulse seventy two", "yes", "undo", "yes", "undo").Transcript);

    [Fact]
    public void What_cannot_be_written_is_not_called_saved() => Golden.Match(
        Talk.WithMary().Go("pulse seventy two", "(saving fails)", "yes", "yes", "(saving works)", "yes").Transcript);

    [Fact]
    public void A_sleeping_resident_who_does_not_wake_is_reported_now() => Golden.Match(
        Talk.WithMary().Go("asleep", "yes", "no").Transcript);

    [Fact]
    public void The_handover_is_answered_within_the_round() => Golden.Match(
        Talk.WithMary().Go("pulse forty four", "four four", "forty six", "four six", "pulse refused", "yes", "next resident", "handover", "next", "details", "goodbye").Transcript);

    [Fact]
    public void A_doubtful_value_is_not_chosen_but_said_in_digits()
    {
        // Source: clinical-rules 7.4, R-10.
        Talk talk = Talk.WithMary().Go("(margin 0.3 respirations fifteen | respirations fifty)");
        talk.Said.ShouldBe("Not sure. Say the digits, one by one.");
        Golden.Match(talk.Go("one five", "yes").Transcript);
    }
}
