using HandsFree.Core.Journal;
using HandsFree.Scenarios.Session;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Round;

/// <summary>Never the wrong resident, by keys, to the journal on the disk. Source: safety.md 6, 8 and 9.</summary>
public sealed class IdentityScenarios
{
    [Fact]
    public void Item_9_no_reading_without_two_identifiers()
    {
        using SessionRig rig = RoundHome.Rig().Types("room 12 bed b", "yes", "0304", "0305", "0306", "pulse 72", "yes");
        rig.Run();
        rig.Readings.ShouldBeEmpty();
        rig.Events.OfType<ResidentIdentified>().ShouldBeEmpty();
        rig.Events.OfType<IdentificationFailed>().ShouldHaveSingleItem().Resident.ShouldBe("mary");
        rig.Said.ShouldContain(s => s.Contains("No readings for room 12 bed B.", StringComparison.Ordinal));
    }

    [Fact]
    public void Item_9_a_name_that_is_not_hers_ends_the_identification()
    {
        using SessionRig rig = RoundHome.Rig().Types("room 4", "no", "0109", "pulse 72", "yes");
        rig.Run();
        rig.Events.OfType<IdentificationFailed>().ShouldHaveSingleItem().Resident.ShouldBe("john");
        rig.Readings.ShouldBeEmpty();
    }

    [Fact]
    public void Item_9_two_residents_of_one_name_are_announced()
    {
        using SessionRig rig = RoundHome.Rig().Types("room 7");
        rig.Run();
        rig.Last().ShouldBe("Careful, two residents have this name. Ann Olsen? Look first.");
    }

    [Fact]
    public void Item_9_twins_in_a_room_are_told_apart_by_the_band()
    {
        using SessionRig rig = RoundHome.Rig().Types("room 8 bed a", "yes", "0506", "102", "101", "pulse 72", "yes");
        rig.Run();
        rig.Said.ShouldContain("The number on band or photo?");
        rig.Events.OfType<ResidentIdentified>().ShouldHaveSingleItem().Resident.ShouldBe("ida");
        rig.Readings.ShouldHaveSingleItem().Resident.ShouldBe("ida");
    }

    [Fact]
    public void Item_9_who_moved_is_found_and_who_is_away_is_said_so()
    {
        using SessionRig rig = RoundHome.Rig().Types("room 10", "room 11", "no", "room 9");
        rig.Run();
        rig.Said.ShouldContain(s => s.StartsWith("Nobody is on the list in room 10. Who was there is now in room 11.", StringComparison.Ordinal));
        rig.Said.ShouldContain("Moved here lately, from room 10. Jon Falk? Look first.");
        rig.Last().ShouldBe("On the list as away, hospital. Carl Ness? Look first.");
    }

    [Fact]
    public void Item_8_digits_without_a_name_identify_and_give_a_value()
    {
        using SessionRig rig = RoundHome.Rig().Types("room 12 bed b", "yes", "4711", "private", "98.6", "yes");
        rig.Run();
        rig.Events.OfType<ResidentIdentified>().ShouldHaveSingleItem().By.ShouldBe(SecondIdentifier.BandNumber);
        ReadingRecorded reading = rig.Readings.ShouldHaveSingleItem();
        (reading.Confirmed.ReadBack.Text, reading.Confirmed.ReadBack.Understood.Heard.Typed).ShouldBe(("temperature, nine eight point six", true));
    }

    [Theory]
    [InlineData("stop")]
    [InlineData("next resident")]
    [InlineData("room 4")]
    public void Item_6_identity_is_asked_again_after_every_departure(string leaving)
    {
        using SessionRig rig = RoundHome.Rig().Types([.. RoundHome.Mary, leaving, "pulse 72", "room 12 bed b", "pulse 74"]);
        rig.Run();
        rig.Events.OfType<ResidentIdentified>().ShouldHaveSingleItem();
        rig.Readings.ShouldBeEmpty();
    }
}
