using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>What may as well have been something else is not obeyed, whatever it means.</summary>
public sealed class DoubtTests
{
    [Theory]
    [InlineData("(margin 0.1 goodbye | pulse four six)")]
    [InlineData("(margin 1.5 goodbye | pulse four six)")] // The round is left: more is needed than for other words.
    [InlineData("(margin 1.5 next resident | pulse four six)")]
    [InlineData("(margin 0.3 undo | pulse four six)")]
    [InlineData("(doubtful 0.5 refused | 0.3 pulse four six)")]
    public void A_doubtful_command_is_ignored_in_silence_where_nothing_was_asked(string line) // Source: safety.md 4.
    {
        Talk talk = Talk.WithMary();
        DialogueState before = talk.State;
        talk.Go(line).LastEffects.ShouldBeEmpty();
        talk.State.ShouldBe(before);
    }

    [Fact]
    public void A_refusal_with_a_small_margin_is_read_back() =>
        Talk.WithMary().Go("(margin 0 pulse refused | pulse seven)").Said.ShouldBe("Pulse, refused.");

    [Fact]
    public void A_sure_goodbye_ends_the_round() =>
        Talk.WithMary().Go("(margin 4 goodbye | pulse four six)").State.Kind.ShouldBe(StateKind.Ended);

    [Theory]
    [InlineData("(margin 0.1 yes | no)")]
    [InlineData("(margin 0.1 no | yes)")]
    [InlineData("(margin 0.1 cancel | yes)")]
    [InlineData("(margin 1 goodbye | yes)")]
    public void A_doubtful_answer_is_asked_again_and_changes_nothing(string line)
    {
        Talk talk = Talk.WithMary().Go("pulse seventy two", line);
        talk.Said.ShouldStartWith("Not understood.");
        talk.Journal.OfType<ReadingRecorded>().ShouldBeEmpty();
        talk.Journal.OfType<AttemptDiscarded>().ShouldBeEmpty();
        talk.Go("yes").Journal.OfType<ReadingRecorded>().ShouldHaveSingleItem().Confirmed.Reading.Value.ShouldBe(HeartRate.FromPerMinute(72));
    }

    [Fact]
    public void Two_hearings_never_make_a_meaning_that_was_not_the_last_heard()
    {
        // Together they say "yes" with 0.91; what was heard last is "no". Neither is obeyed: it is asked again.
        Talk talk = Talk.WithMary().Go("pulse seventy two", "(doubtful 0.74 yes | 0.05 no)", "(doubtful 0.48 no | 0.47 yes)");

        talk.State.Kind.ShouldBe(StateKind.AwaitingConfirmation);
        talk.Said.ShouldContain("Not understood.");
        talk.Journal.OfType<AttemptDiscarded>().ShouldBeEmpty();
        talk.Journal.OfType<ReadingRecorded>().ShouldBeEmpty();
    }

    [Theory]
    [InlineData("(margin 0 stop | pulse four six)")]
    [InlineData("(doubtful 0.4 stop | 0.35 pulse four six)")]
    public void Stop_silences_at_once_however_doubtful(string line)
    {
        Talk talk = Talk.WithMary().Go("pulse seventy two", line);
        (talk.State.Kind, talk.State.Resident).ShouldBe((StateKind.AwaitingRoom, null));
    }

    [Fact]
    public void A_doubtful_call_for_help_is_answered() // Source: safety.md 16.
        => Talk.WithMary().Go("(margin 0 nurse needed | pain eight)").Said.ShouldBe("I cannot call. Use the call light.");

    [Fact]
    public void A_doubtful_fall_is_asked_for_and_not_passed_over() // Source: safety.md 15 to 17: help is not delayed.
    {
        Talk talk = Talk.WithMary().Go("(margin 0 fell | pulse four six)");
        talk.Said.ShouldEndWith("Dizzy or a fall, yes or no?");
        talk.Journal.OfType<ReportOpened>().ShouldBeEmpty();
    }

    [Fact]
    public void Two_doubtful_answers_that_agree_are_one_that_is_sure()
    {
        // By hand: 0.7 * 0.7 against 0.25 * 0.25 and 0.05 * 0.05: 0.88.
        Talk talk = Talk.WithMary().Go("pulse seventy two", "(doubtful 0.7 yes | 0.25 no)");
        talk.Said.ShouldStartWith("Not understood.");
        talk.Go("(doubtful 0.7 yes | 0.25 no)").Said.ShouldBe("Saved.");
    }

    [Fact]
    public void Two_doubtful_answers_that_contradict_each_other_decide_nothing()
    {
        Talk talk = Talk.WithMary().Go("pulse seventy two", "(doubtful 0.7 yes | 0.25 no)", "(doubtful 0.7 no | 0.25 yes)");
        talk.Said.ShouldStartWith("Not understood.");
        talk.Journal.OfType<ReadingRecorded>().ShouldBeEmpty();
    }

    [Fact]
    public void A_sure_answer_needs_no_earlier_one() =>
        Talk.WithMary().Go("pulse seventy two", "(doubtful 0.72 yes | 0.2 no)", "cancel").State.Kind.ShouldBe(StateKind.Ready);

    [Fact]
    public void A_doubtful_value_is_asked_for_digit_by_digit() =>
        Talk.WithMary().Go("(doubtful 0.5 pulse fifty | 0.4 pulse sixty)").Said.ShouldBe("Not sure. Say the digits, one by one.");

    [Fact]
    public void Of_two_rooms_the_one_where_somebody_lives_is_meant()
    {
        new Talk().Go("(doubtful 0.5 room twelve bed b | 0.4 room twenty bed b)").State.Kind.ShouldBe(StateKind.AwaitingName);
        new Talk().Go("(doubtful 0.48 room twenty bed b | 0.4 room twelve bed b)").State.Kind.ShouldBe(StateKind.AwaitingName);
        new Talk().Go("room twenty bed b").Said.ShouldStartWith("Nobody is on the list in room 20 bed B.");
    }

    [Fact]
    public void Two_rooms_where_somebody_lives_are_asked_again_and_two_hearings_decide()
    {
        Talk talk = new Talk().Go("(doubtful 0.6 room twelve bed b | 0.35 room twelve bed a)");
        talk.Said.ShouldStartWith("Not understood.");
        talk.Go("(doubtful 0.6 room twelve bed b | 0.3 room twelve bed a)").State.Kind.ShouldBe(StateKind.AwaitingName);
    }

    [Fact]
    public void A_birthday_is_never_made_likelier_because_it_would_match() =>
        new Talk().Go("room twelve bed b", "yes", "(doubtful 0.5 march third | 0.4 march thirtieth)").Said.ShouldStartWith("Not understood.");

    [Fact]
    public void A_birthday_with_the_year_and_without_is_one_answer() =>
        new Talk().Go("room twelve bed b", "yes", "(doubtful 0.5 march third | 0.4 march third nineteen thirty eight)")
            .State.Resident.ShouldBe("r-12b");
}
