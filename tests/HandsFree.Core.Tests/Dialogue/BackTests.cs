using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>Cancel, undo, go back and "wrong resident" each do what one expects; what is typed and not understood gets an answer.</summary>
public sealed class BackTests
{
    [Theory]
    [InlineData("cancel")]
    [InlineData("undo")]
    public void What_is_not_confirmed_is_dropped(string word)
    {
        Talk talk = Talk.WithMary().Go("oxygen ninety six", "yes", "pulse seventy two", word);
        talk.Said.ShouldBe("Cancelled.");
        talk.State.Kind.ShouldBe(StateKind.Ready);
        talk.Journal.OfType<EnteredInError>().ShouldBeEmpty();
    }

    [Fact]
    public void Go_back_asks_for_the_value_again_and_refuses_none()
    {
        Talk talk = Talk.WithMary().Go("pulse seventy two", "go back");
        talk.Said.ShouldBe("Say the pulse.");
        talk.Go("seventy two").Said.ShouldBe("Pulse, seven two.");
    }

    [Fact]
    public void Where_nothing_is_open_go_back_is_undo_and_cancel_says_so()
    {
        Talk.WithMary().Go("pulse seventy two", "yes", "go back").Said.ShouldBe("Remove pulse, seven two?");
        Talk.WithMary().Go("pulse seventy two", "yes", "cancel").Said.ShouldBe("Nothing is open. To take back the last value, say undo.");
    }

    [Fact]
    public void Wrong_resident_takes_the_whole_visit_back_and_asks_for_the_right_place()
    {
        Talk talk = Talk.WithMary().Go("pulse seventy two", "yes", "oxygen ninety six", "yes", "wrong resident");
        talk.Said.ShouldBe("Take back two of room 12 bed B?");
        talk.Go("yes").Said.ShouldBe("Removed. Room and bed of the right resident, then measure or say it again.");
        talk.Journal.OfType<EnteredInError>().Count().ShouldBe(2);
        (talk.State.Kind, talk.State.Resident).ShouldBe((StateKind.AwaitingRoom, null));
        talk.Go("room twelve bed b", "yes", "march third", "(nothing)").Said.ShouldBe("Temperature?");
    }

    [Fact]
    public void Of_an_earlier_visit_nothing_is_taken_back()
    {
        Talk talk = Talk.WithMary().Go("pulse seventy two", "yes", "next resident", "room twelve bed b", "yes", "march third", "oxygen ninety six", "yes");
        talk.Go("wrong resident").Said.ShouldBe("Take back one of room 12 bed B?");
        talk.Go("yes").Journal.OfType<EnteredInError>().ShouldHaveSingleItem();
    }

    [Fact]
    public void No_leaves_all_of_it() =>
        Talk.WithMary().Go("pulse seventy two", "yes", "wrong person", "no").Journal.OfType<EnteredInError>().ShouldBeEmpty();

    [Fact]
    public void What_cannot_be_written_is_not_taken_back()
    {
        Talk talk = Talk.WithMary().Go("pulse seventy two", "yes", "wrong resident", "(saving fails)", "yes", "no");
        talk.State.Resident.ShouldBe("r-12b");
        talk.State.Kind.ShouldBe(StateKind.Ready);
    }

    [Theory]
    [InlineData()]
    [InlineData("pause")]
    [InlineData("count", "(played)")]
    [InlineData("pulse forty four", "four four")]
    [InlineData("stop")]
    [InlineData("next resident", "handover")]
    public void What_is_typed_and_not_understood_gets_an_answer_where_chat_gets_none(params string[] before)
    {
        Talk talk = Talk.WithMary().Go(before);
        DialogueState state = talk.State;
        if (before is not ["pulse forty four", ..])
        {
            talk.Go("(mumble)").LastEffects.ShouldBeEmpty();
            talk.State.ShouldBe(state);
        }

        talk.Go("(unknown)").Said.ShouldStartWith("Not understood.");
    }
}
