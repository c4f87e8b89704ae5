using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Residents;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>Never the wrong resident (safety.md 8, 9).</summary>
public sealed class IdentityTests
{
    private static readonly DateOnly Today = DateOnly.FromDateTime(TestHome.Morning.DateTime);

    private static readonly Roster Home = new(
    [
        new Resident { Id = "t1", Name = "Ida Voss", Room = 8, Bed = "a", Born = new DateOnly(1940, 5, 6), BandNumber = "101" },
        new Resident { Id = "t2", Name = "Ada Voss", Room = 8, Bed = "b", Born = new DateOnly(1940, 5, 6), BandNumber = "102" },
        new Resident { Id = "a", Name = "Carl Ness", Room = 9, Born = new DateOnly(1939, 1, 2), Away = new Absence("hospital", Today, null) },
        new Resident { Id = "m", Name = "Jon Falk", Room = 11, Born = new DateOnly(1942, 7, 8), Moved = new Move(10, null, Today) },
    ]);

    [Fact]
    public void Day_and_month_with_another_year_are_another_birthday()
    {
        Talk talk = new Talk().Go("room twelve bed b", "yes", "march third nineteen forty two");
        talk.Said.ShouldStartWith("That does not match.");
        talk.State.Resident.ShouldBeNull();

        talk.Go("march third nineteen forty one").State.Resident.ShouldBe("r-12b");
    }

    [Fact]
    public void Digits_without_a_label_identify_by_band_or_by_birthday()
    {
        Talk.WithMary().State.Resident.ShouldBe("r-12b");
        new Talk().Go("room twelve bed b", "yes", "four seven one one").State.Resident.ShouldBe("r-12b");
        Talk birthday = new Talk().Go("room twelve bed b", "yes", "zero three zero three");
        birthday.Journal.OfType<ResidentIdentified>().Single().By.ShouldBe(SecondIdentifier.BirthDayAndMonth);
        new Talk().Go("room twelve bed b", "yes", "zero three zero four").Said.ShouldStartWith("That does not match.");
        new Talk().Go("room twelve bed b", "yes", "band zero three zero three").Said.ShouldStartWith("That does not match.");
    }

    [Fact]
    public void Twins_in_a_room_are_told_apart_by_the_band_alone()
    {
        Talk talk = In("room eight bed a", "yes");
        talk.Said.ShouldBe("The number on band or photo?");
        talk.Go("may sixth").Said.ShouldStartWith("Two have this birthday. Say band and its number.");
        talk.Go("band one oh two").Said.ShouldStartWith("That does not match.");
        In("room eight bed a", "yes", "band one oh one").State.Resident.ShouldBe("t1");
    }

    [Fact]
    public void A_resident_on_the_list_as_away_is_said_so_and_nothing_is_due_of_her()
    {
        Talk talk = In("room nine");
        talk.Said.ShouldBe("On the list as away, hospital. Carl Ness? Look first.");
        talk.Go("yes", "january second", "(nothing)").Said.ShouldBe("All is taken.");
    }

    [Fact]
    public void A_resident_who_moved_is_found_from_her_old_room_and_announced_in_her_new_one()
    {
        In("room ten").Said.ShouldStartWith("Nobody is on the list in room 10. Who was there is now in room 11.");
        In("room eleven").Said.ShouldBe("Moved here lately, from room 10. Jon Falk? Look first.");
    }

    [Theory]
    [InlineData("stop")]
    [InlineData("next resident")]
    public void After_every_departure_identity_is_asked_again(string leaving) // Source: safety.md 6.
    {
        Talk talk = Talk.WithMary().Go(leaving);
        talk.State.Resident.ShouldBeNull();
        talk.Go("room twelve bed b").State.Kind.ShouldBe(StateKind.AwaitingName);
    }

    private static Talk In(params string[] lines) => new Talk(roster: Home).Go(lines);
}
