using HandsFree.Core.Residents;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Residents;

public sealed class RosterTests
{
    private static readonly DateOnly Today = new(2026, 3, 10);

    private static readonly Roster Home = new(
    [
        Who("r1", "Ada Quill", 12, "a", new(1931, 3, 9)),
        Who("r2", "Eva Quill", 12, "b", new(1931, 3, 9)), // twins in one room
        Who("r3", "ada quill", 14, null, new(1940, 11, 30)),
        Who("r4", "Cy Marsh", 3, null, new(1928, 2, 29)) with { Moved = new(14, "b", new(2026, 3, 5)) },
        Who("r5", "Cyrus Marsh", 4, null, new(1935, 3, 9)) with { OfficialName = "Cy Marsh", Away = new("hospital", new(2026, 3, 8), new(2026, 3, 12)) },
    ]);

    [Fact]
    public void Residents_of_one_name_are_found_in_any_case_of_letters_and_by_the_name_on_the_band()
    {
        Home.SharingName(Home.Residents[0]).Select(r => r.Id).ShouldBe(["r3"]);
        Home.SharingName(Home.Residents[3]).Select(r => r.Id).ShouldBe(["r5"]);
        Home.SharesName(Home.Residents[1]).ShouldBeFalse();
    }

    [Fact]
    public void Twins_in_a_room_are_not_told_apart_by_their_birthday()
    {
        Home.BirthdayTellsApart(Home.Residents[0]).ShouldBeFalse();
        Home.BirthdayTellsApart(Home.Residents[1]).ShouldBeFalse();
        Home.BirthdayTellsApart(Home.Residents[4]).ShouldBeTrue("a birthday of somebody else in another room confuses nobody");
    }

    [Theory]
    [InlineData(4, false)]
    [InlineData(5, true)]
    [InlineData(12, true)]
    [InlineData(13, false)]
    public void A_move_is_said_for_a_week(int day, bool said)
    {
        Home.MovedFrom(14, null, new(2026, 3, day)).Any().ShouldBe(said);
        Roster.CameLately(Home.Residents[3], new(2026, 3, day)).ShouldBe(said);
        Home.MovedFrom(14, "a", Today).ShouldBeEmpty();
    }

    [Theory]
    [InlineData(7, false)]
    [InlineData(8, true)]
    [InlineData(12, true)]
    [InlineData(13, false)]
    public void An_absence_has_its_days(int day, bool away) => Home.Residents[4].Away!.On(new(2026, 3, day)).ShouldBe(away);

    private static Resident Who(string id, string name, int room, string? bed, DateOnly born) => new() { Id = id, Name = name, Room = room, Bed = bed, Born = born };
}
