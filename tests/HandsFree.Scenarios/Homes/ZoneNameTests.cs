using HandsFree.App.Homes;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Homes;

/// <summary>A home's folder goes from one system to the other. Source of the pairs of names: Unicode CLDR, common/supplemental/windowsZones.xml
/// (opened, typeVersion 2021a).</summary>
public sealed class ZoneNameTests
{
    [Theory]
    [InlineData("America/Chicago", "Central Standard Time")]
    [InlineData("America/New_York", "Eastern Standard Time")]
    [InlineData("America/Denver", "Mountain Standard Time")]
    [InlineData("America/Boise", "Mountain Standard Time")]
    [InlineData("America/Los_Angeles", "Pacific Standard Time")]
    [InlineData("America/Phoenix", "US Mountain Standard Time")]
    [InlineData("America/Anchorage", "Alaskan Standard Time")]
    [InlineData("Pacific/Honolulu", "Hawaiian Standard Time")]
    [InlineData("America/Regina", "Canada Central Standard Time")]
    [InlineData("America/Halifax", "Atlantic Standard Time")]
    [InlineData("America/St_Johns", "Newfoundland Standard Time")]
    [InlineData("America/Indiana/Vevay", "US Eastern Standard Time")]
    public void On_a_system_that_knows_only_its_own_names_the_other_system_s_name_is_found(string iana, string windows)
    {
        ZoneName.Find(iana, Only(windows)).ShouldNotBeNull().Id.ShouldBe(windows);
        ZoneName.Find(windows, OnlyIana).ShouldNotBeNull();
    }

    [Fact]
    public void A_system_that_knows_the_name_itself_is_not_asked_for_another() =>
        ZoneName.Find("America/Boise", name => name is "America/Boise" or "Mountain Standard Time" ? Zone(name) : null)!.Id.ShouldBe("America/Boise");

    [Fact]
    public void Every_zone_of_this_machine_that_a_city_has_is_found_by_a_system_that_knows_Windows_names_only()
    {
        string[] cities = [.. TimeZoneInfo.GetSystemTimeZones().Select(z => z.Id).Where(IsCity)];
        Assert.SkipWhen(cities.Length < 300, "this machine has few IANA zones");

        cities.Where(name => ZoneName.Find(name, OnlyWindows) is null).ShouldBeSubsetOf(["Antarctica/Troll"]); // Windows has no zone for it
    }

    [Fact]
    public void The_offset_of_now_and_of_July_is_the_same_by_both_names_where_this_machine_can_say_so()
    {
        string[] names = ["Central Standard Time", "Eastern Standard Time", "Pacific Standard Time", "US Mountain Standard Time", "GMT Standard Time"];
        string[] cities = ["America/Chicago", "America/New_York", "America/Los_Angeles", "America/Phoenix", "Europe/London"];
        foreach ((string windows, string iana) in names.Zip(cities))
        {
            foreach (DateTime day in (DateTime[])[new(2026, 1, 15), new(2026, 7, 15)])
            {
                ZoneName.Find(windows)!.GetUtcOffset(day).ShouldBe(ZoneName.Find(iana)!.GetUtcOffset(day), $"{windows} {day:d}");
            }
        }
    }

    [Fact]
    public void A_name_that_no_system_has_is_none() => ZoneName.Find("Atlantis/Harbour").ShouldBeNull();

    private static bool IsCity(string name) => name.Split('/') is [var area, _, ..]
        && area is "Africa" or "America" or "Antarctica" or "Arctic" or "Asia" or "Atlantic" or "Australia" or "Europe" or "Indian" or "Pacific";

    private static Func<string, TimeZoneInfo?> Only(string known) => name => name == known ? Zone(name) : null;

    private static TimeZoneInfo? OnlyWindows(string name) => name.Contains('/', StringComparison.Ordinal) ? null : Zone(name);

    private static TimeZoneInfo? OnlyIana(string name) => name.Contains('/', StringComparison.Ordinal) ? Zone(name) : null;

    private static TimeZoneInfo Zone(string name) => TimeZoneInfo.CreateCustomTimeZone(name, TimeSpan.Zero, name, name);
}
