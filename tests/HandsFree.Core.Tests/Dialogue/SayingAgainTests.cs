using HandsFree.Core.Observations;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>A value that is said again: what confirms it, what refuses it. Source: safety.md 4 and 11.</summary>
public sealed class SayingAgainTests
{
    [Theory]
    [InlineData("three nine")]
    [InlineData("seven eight")]
    public void What_is_said_again_of_a_count_is_the_count_or_what_it_makes(string again)
    {
        Talk talk = Talk.WithMary(new DialogueSettings { DigitByDigit = true, Due = [VitalSign.Pulse] });
        talk.Go("count", "(played)", "(timer count)", "thirty nine");
        talk.Said.ShouldBe("Pulse, three nine in thirty seconds, makes seven eight. Say again what you counted, digit by digit.");
        talk.Go(again).Journal.OfType<ReadingRecorded>().ShouldHaveSingleItem().Confirmed.Reading.Value.ShouldBe(HeartRate.FromPerMinute(78));
    }

    [Fact]
    public void More_that_is_said_with_the_second_saying_is_read_back_and_kept()
    {
        Talk talk = Talk.WithMary().Go("blood pressure one nine zero over seven zero", "blood pressure one nine zero over seven zero left arm sitting");
        talk.Said.ShouldBe("Blood pressure, one nine zero over seven zero, left arm, sitting.");
        talk.Journal.OfType<ReadingRecorded>().ShouldBeEmpty();

        talk.Go("yes").Journal.OfType<ReadingRecorded>().ShouldHaveSingleItem().Confirmed.Reading.How
            .ShouldBe(new Circumstances { Arm = Arm.Left, Position = BodyPosition.Sitting, MinutesRested = 0 });
    }

    [Fact]
    public void An_arm_that_must_not_be_used_is_refused_with_the_second_saying_too()
    {
        // Source: clinical-rules 5.1; the resident of room four has a fistula in the left arm (invented).
        Talk talk = new Talk(rules: Core.Rules.Rulebook.Load().Rulebook).Go("room four", "yes", "january ninth", "was resting",
            "blood pressure one nine zero over seven zero", "blood pressure one nine zero over seven zero left arm");

        talk.State.Kind.ShouldBe(StateKind.AwaitingValue);
        talk.Journal.OfType<ReadingRecorded>().ShouldBeEmpty();
    }

    [Fact]
    public void A_wrong_read_back_that_is_to_be_said_again_can_be_refused()
    {
        Talk.WithMary().Go("pulse forty four", "no").Said.ShouldBe("Say the pulse.");
        Talk.WithMary().Go("pulse forty four", "no seven four").Said.ShouldBe("Pulse, seven four.");
    }

    [Fact]
    public void What_sounds_like_another_number_is_said_again_digit_by_digit()
    {
        Talk talk = Talk.WithMary().Go("respirations fifteen", "fifteen");
        talk.Said.ShouldStartWith("Each digit by itself.");
        talk.Go("one five").Journal.OfType<ReadingRecorded>().ShouldHaveSingleItem();
    }

    [Fact]
    public void A_doubtful_second_saying_confirms_together_with_the_first()
    {
        // By hand: 0.9 * 0.6 against 0.05 * 0.3 and 0.05 * 0.1: 0.96.
        Talk talk = Talk.WithMary().Go("(doubtful 0.9 pulse forty four | 0.05 pulse forty)", "(doubtful 0.6 four four | 0.3 forty)");
        talk.Journal.OfType<ReadingRecorded>().ShouldHaveSingleItem().Confirmed.Reading.Value.ShouldBe(HeartRate.FromPerMinute(44));
    }

    [Theory]
    [InlineData("(doubtful 0.4 four four | 0.3 forty)")] // All else together is likelier.
    [InlineData("(doubtful 0.6 forty | 0.3 four four)")] // What is likeliest is another number.
    [InlineData("(doubtful 0.6 seven four | 0.3 seventy)")]
    public void A_second_saying_that_is_less_sure_or_another_number_does_not(string again)
    {
        Talk talk = Talk.WithMary().Go("pulse forty four", again);
        talk.Journal.OfType<ReadingRecorded>().ShouldBeEmpty();
        talk.Said.ShouldStartWith("Not sure.");
    }

    [Fact]
    public void A_much_quieter_no_is_asked_again() =>
        Talk.WithMary().Go("pulse seventy two", "(quiet no)").Said.ShouldStartWith("Was that you?");

    [Fact]
    public void No_drops_what_was_said_about_the_way_it_was_taken() =>
        Talk.WithMary().Go("blood pressure one two zero over eight zero left arm", "no", "one two two over eight zero").Said
            .ShouldBe("Blood pressure, one two two over eight zero.");

    [Fact]
    public void Count_the_pulse_counts_the_pulse_where_breaths_would_be_next() =>
        Talk.WithMary().Go("pulse seventy two", "yes", "count the pulse").Said.ShouldStartWith("Count the pulse for thirty seconds");

    [Fact]
    public void The_third_prompt_still_says_what_to_do() =>
        Talk.WithMary(new DialogueSettings { SamplePhrases = _ => ["ninety six"] }).Go("pulse forty four", "yes", "yes").Said.ShouldContain("Say the number again, digit by digit.");

    [Theory] // What was misheard once is misheard again in the same way: the second and third saying must not save it.
    [InlineData("respirations twenty nine", "two", "two")]
    [InlineData("respirations nine", "five", "five")]
    [InlineData("pulse forty four", "six four", "pulse six four")]
    public void Another_second_saying_is_never_saved_by_being_repeated(string first, string second, string third)
    {
        Talk talk = Talk.WithMary().Go(first, second, third);
        talk.Journal.OfType<ReadingRecorded>().ShouldBeEmpty();
    }

    [Fact]
    public void Another_second_saying_is_saved_by_a_yes_to_its_own_read_back()
    {
        Talk talk = Talk.WithMary().Go("respirations nine", "five");
        talk.Said.ShouldBe("That is another number. Respirations, five. Yes or no?");
        talk.Go("no", "nine").Said.ShouldBe("Respirations, nine. Say the number again, digit by digit.");
        talk.Go("nine").Said.ShouldBe("Respirations, nine. Yes or no?");
        talk.Go("yes").Journal.OfType<ReadingRecorded>().ShouldHaveSingleItem().Confirmed.Reading.Value.ShouldBe(RespiratoryRate.FromPerMinute(9));
    }

    [Theory]
    [InlineData("pulse four four", "four four")]
    [InlineData("blood pressure one nine oh over eight oh", "one nine zero over eight zero")] // "Oh" and "zero" hide nothing of the rest.
    public void The_same_sound_twice_counts_once_and_needs_a_yes(string first, string second)
    {
        Talk talk = Talk.WithMary().Go(first, second);
        talk.Journal.OfType<ReadingRecorded>().ShouldBeEmpty();
        talk.Said.ShouldEndWith("Yes or no?");
        talk.Go("yes").Journal.OfType<ReadingRecorded>().ShouldHaveSingleItem();
    }

    [Fact]
    public void What_was_typed_twice_is_sure() =>
        Talk.WithMary().Go("(typed pulse four four)", "(typed four four)").Journal.OfType<ReadingRecorded>().ShouldHaveSingleItem();

    [Fact]
    public void A_second_saying_that_the_other_hearings_contradict_needs_a_yes()
    {
        // By hand: 44 and 64 are as likely after the first two, and the third lists nothing else: its digits alone decide nothing.
        Talk talk = Talk.WithMary().Go("(doubtful 0.5 pulse forty four | 0.45 pulse sixty four)", "(doubtful 0.6 six four | 0.3 four four)");
        talk.Journal.OfType<ReadingRecorded>().ShouldBeEmpty();
    }

    [Fact]
    public void The_same_doubtful_sound_twice_is_as_doubtful_as_once()
    {
        Talk talk = Talk.WithMary().Go("(doubtful 0.5 pulse four four | 0.3 pulse six four)", "(doubtful 0.5 four four | 0.3 six four)");
        talk.Said.ShouldStartWith("Not sure.");
        Talk two = Talk.WithMary().Go("(doubtful 0.5 pulse forty four | 0.3 pulse sixty four)", "(doubtful 0.5 four four | 0.3 six four)");
        two.Said.ShouldBe("Pulse, four four.");
    }

    [Fact]
    public void What_is_added_to_a_value_forgets_no_hearing() =>
        Talk.WithMary().Go("blood pressure one nine zero over eight zero", "left arm", "one nine zero over eight zero").Journal.OfType<ReadingRecorded>().ShouldBeEmpty();
}
