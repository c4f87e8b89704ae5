using System.Globalization;
using HandsFree.App.Homes;
using HandsFree.App.ShiftChange;
using HandsFree.Core.Journal;
using HandsFree.Scenarios.CommandLine;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Handover;

public sealed class ShiftBeginningTests
{
    private static readonly HomeSettings Settings = new() { TimeZone = TimeZoneInfo.FindSystemTimeZoneById("America/Chicago") };

    [Theory]
    [InlineData("2026-03-03T12:00-06:00", "2026-03-03T07:00-06:00")]
    [InlineData("2026-03-03T15:59-06:00", "2026-03-03T07:00-06:00")] // the change of shift: still the day shift's list
    [InlineData("2026-03-03T16:00-06:00", "2026-03-03T15:00-06:00")]
    [InlineData("2026-03-03T07:10-06:00", "2026-03-02T23:00-06:00")]
    public void The_list_is_that_of_the_present_shift_and_in_its_first_hour_of_the_one_before(string now, string began)
    {
        ShiftBeginning since = ShiftBeginning.Present(Settings, [InventedHome.Pulse("s-1", "r1", 72, Parsed(now))], Parsed(now));

        since.ShouldBe(new ShiftBeginning(Parsed(began), null));
    }

    [Fact]
    public void Where_nothing_was_recorded_in_the_present_shift_the_last_one_is_listed_and_that_is_said()
    {
        JournalEvent yesterday = InventedHome.Pulse("s-1", "r1", 72, Parsed("2026-03-02T09:12-06:00"));

        ShiftBeginning since = ShiftBeginning.Present(Settings, [yesterday], Parsed("2026-03-03T12:00-06:00"));

        since.At.ShouldBe(Parsed("2026-03-02T07:00-06:00"));
        since.Remark.ShouldBe("nothing was recorded in the present shift; this is the shift of the last entry, 2 March 2026, 09:12");
    }

    [Theory]
    [InlineData("7:00", "2026-03-03T07:00-06:00")]
    [InlineData("23:00", "2026-03-02T23:00-06:00")] // the last one that is over
    [InlineData("2026-03-01 15:00", "2026-03-01T15:00-06:00")]
    public void A_typed_time_is_in_the_home_s_zone_and_not_in_the_future(string typed, string began)
    {
        ShiftBeginning.Typed(typed, Settings, Parsed("2026-03-03T12:00-06:00"))!.At.ShouldBe(Parsed(began));
    }

    private static DateTimeOffset Parsed(string text) => DateTimeOffset.Parse(text, CultureInfo.InvariantCulture);
}
