using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>Fewer words, never an implied yes.</summary>
public sealed class FewerWordsTests
{
    [Fact]
    public void Place_and_birthday_in_one_breath_leave_the_name_to_be_agreed()
    {
        Talk talk = new Talk().Go("room twelve bed b march third");
        talk.Said.ShouldBe("Mary Miller? Look first.");
        talk.State.Resident.ShouldBeNull();
        talk.Go("yes").State.Resident.ShouldBe("r-12b");
        talk.Journal.OfType<ResidentIdentified>().ShouldHaveSingleItem().By.ShouldBe(SecondIdentifier.BirthDayAndMonth);
    }

    [Theory]
    [InlineData("room twelve bed b march fourth")]
    [InlineData("room twelve bed b march third nineteen fifty")]
    public void Another_birthday_identifies_nobody(string said)
    {
        Talk talk = new Talk().Go(said, "yes");
        talk.Said.ShouldStartWith("That does not match.");
        talk.State.Resident.ShouldBeNull();
    }

    [Fact]
    public void Without_the_name_agreed_the_birthday_is_worth_nothing() =>
        new Talk().Go("room twelve bed b march third", "no").State.Resident.ShouldBeNull();

    [Fact]
    public void Saved_is_a_tone_and_a_word_on_the_screen()
    {
        Talk talk = Talk.WithMary().Go("pulse seventy two", "yes");
        talk.LastEffects.OfType<Effect.Play>().ShouldHaveSingleItem().Tone.ShouldBe(Tone.Saved);
        talk.LastEffects.OfType<Effect.Say>().ShouldBeEmpty();
        talk.State.Screen.Awaited.ShouldBe("saved; readings");
        talk.Go("oxygen ninety six").State.Screen.Awaited.ShouldBe("yes or no");
    }

    [Fact]
    public void Saved_is_spoken_with_an_instruction() =>
        Talk.WithMary().Go("pulse forty four", "four four").Said.ShouldStartWith("Saved. Count sixty seconds.");

    [Fact]
    public void Not_saved_has_a_tone_of_its_own_and_words()
    {
        Talk talk = Talk.WithMary().Go("(saving fails)", "pulse seventy two", "yes");
        talk.LastEffects.OfType<Effect.Play>().ShouldHaveSingleItem().Tone.ShouldBe(Tone.NotSaved);
        talk.Said.ShouldBe("Not saved. Try again?");
    }

    [Fact]
    public void The_last_yes_of_a_set_says_that_nothing_is_open_and_who_is_next()
    {
        Talk talk = Talk.WithMary().Go(
            "temperature ninety eight six", "yes", "pulse seventy two", "yes", "respirations sixteen", "yes", "blood pressure one twenty over eighty", "yes", "oxygen ninety six", "yes");
        talk.Said.ShouldBe("Nothing open. Next: room 4.");
        talk.Go("pulse seventy four", "yes").Said.ShouldBe("Saved.");
    }

    [Fact]
    public void What_can_be_said_is_listed_on_options_alone()
    {
        var settings = new DialogueSettings { SamplePhrases = _ => ["ninety six"] };
        Talk talk = Talk.WithMary(settings).Go("pulse seventy two", "(mumble)", "(mumble)");
        talk.Transcript.ShouldNotContain("You can say");
        Talk.WithMary(settings).Go("pulse seventy two", "options").Said.ShouldBe("You can say: ninety six.");
    }

    [Fact]
    public void Units_and_the_usual_are_not_said_and_whatever_deviates_is()
    {
        Talk.WithMary().Go("oxygen ninety six on room air").Said.ShouldBe("Oxygen, nine six.");
        Talk.WithMary().Go("oxygen ninety six on two liters").Said.ShouldBe("Oxygen, nine six, on two litres.");
        Talk.WithMary().Go("temperature thirty seven point two").Said.ShouldBe("Temperature, three seven point two Celsius.");
        Talk.WithMary().Go("weight one fifty kilograms").Said.ShouldContain("kilograms");
    }
}
