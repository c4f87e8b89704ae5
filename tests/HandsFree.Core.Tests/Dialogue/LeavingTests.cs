using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>Who leaves hears what is open, and a place is heard wherever somebody speaks.</summary>
public sealed class LeavingTests
{
    private static readonly Dictionary<string, string[]> Pending = new()
    {
        ["confirmation"] = ["pulse seventy two"],
        ["saying again"] = ["pulse forty four"],
        ["value"] = ["pulse seventy two", "no"],
        ["counting"] = ["count", "(played)"],
        ["count"] = ["count", "(played)", "(timer count)"],
        ["not taken"] = ["pulse refused"],
        ["answer"] = ["i'm worried"],
        ["undo"] = ["oxygen ninety six", "yes", "undo"],
        ["paused"] = ["pause"],
        ["recheck"] = ["blood pressure one eighty five over ninety", "one eight five over nine zero"],
    };

    public static TheoryData<string> Questions => [.. Pending.Keys];

    [Theory]
    [MemberData(nameof(Questions))]
    public void Another_room_is_heard_whatever_is_open(string open)
    {
        Talk talk = Talk.WithMary().Go(Pending[open]).Go("room four");
        talk.State.Kind.ShouldBe(StateKind.AwaitingName);
        talk.Said.ShouldEndWith("John Berg? Look first.");
        talk.Journal.OfType<ReadingRecorded>().ShouldNotContain(r => r.Confirmed.Reading.Value == HeartRate.FromPerMinute(72));
    }

    [Theory]
    [MemberData(nameof(Questions))]
    public void Next_resident_is_heard_whatever_is_open(string open) =>
        Talk.WithMary().Go(Pending[open]).Go("next resident").State.Kind.ShouldBe(StateKind.AwaitingRoom);

    [Fact]
    public void A_place_heard_with_a_small_margin_leaves_nobody() =>
        Talk.WithMary().Go("pulse seventy two", "(margin 1.5 room four | no)").State.Resident.ShouldBe("r-12b");

    [Fact]
    public void After_what_was_not_understood_the_read_back_names_the_room()
    {
        Talk talk = Talk.WithMary().Go("pulse seventy two", "(mumble)");
        talk.Said.ShouldBe("Not understood. Room 12 bed B. Pulse, seven two. Is that what you said?");
        talk.Go("no eight two").Said.ShouldBe("Room 12 bed B. Pulse, eight two.");
        talk.Go("yes", "respirations sixteen").Said.ShouldNotContain("Room 12");
    }

    [Fact]
    public void Who_leaves_hears_once_what_is_open()
    {
        Talk talk = Talk.WithMary().Go("pulse seventy two", "yes", "respirations sixteen", "yes", "temperature ninety eight six", "yes", "next resident");
        talk.Said.ShouldBe("Room 12 bed B: blood pressure and oxygen not taken yet. Room and bed?");
        talk.Go("room four").Said.ShouldBe("John Berg? Look first.");
    }

    [Fact]
    public void Who_has_not_told_the_nurse_hears_it_when_she_leaves_and_when_the_next_round_begins()
    {
        Talk talk = Talk.WithMary().Go("respirations six", "six", "yes", "done");
        talk.Said.ShouldBe("Room 12 bed B: four not taken yet. Tell the nurse before you leave: respirations. Room and bed?");
        talk.Go("goodbye").Said.ShouldBe("Room 12 bed B: four not taken yet. Tell the nurse before you leave: respirations. Goodbye.");
        talk.Interrupted(minutes: 60).Said.ShouldBe("Open from before: room 12 bed B, tell the nurse: respirations. Room and bed?");
    }

    [Fact]
    public void The_bed_alone_is_enough_after_the_room()
    {
        new Talk().Go("room twelve", "bed a").Said.ShouldBe("Careful, two residents have this name. Ann Olsen? Look first.");
        new Talk().Go("bed a").Said.ShouldBe("Bed A of which room?");
    }

    [Fact]
    public void The_example_is_a_place_that_the_home_has() =>
        new Talk().Go("(mumble)").Said.ShouldBe("Not understood. Say room and bed. Example: room 12, bed B.");

    [Fact]
    public void Goodbye_names_the_places_and_what_the_nurse_must_be_told()
    {
        Talk talk = Talk.WithMary().Go("respirations six", "six", "yes", "room four", "yes", "january ninth", "pulse seventy two", "yes", "goodbye");
        talk.Said.ShouldBe("Open: room 4 and room 12 bed B. Tell the nurse before you leave: room 12 bed B, respirations. Goodbye.");
    }
}
