using HandsFree.Core.Handover;
using HandsFree.Core.Meanings;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Handover;

public sealed class ShiftClockTests
{
    private static readonly ShiftClock Clock = new(TimeZoneInfo.FindSystemTimeZoneById("America/Chicago"), [new(7, 0), new(15, 0), new(23, 0)]);

    [Theory]
    [InlineData(3, 0, true, "2026-03-03T16:10", "2026-03-03T15:00")]
    [InlineData(3, 0, true, "2026-03-03T14:59", "2026-03-03T03:00")]
    [InlineData(3, 0, true, "2026-03-03T02:59", "2026-03-02T15:00")]
    [InlineData(12, 0, true, "2026-03-03T11:00", "2026-03-03T00:00")]
    [InlineData(12, 30, true, "2026-03-03T12:30", "2026-03-03T12:30")]
    [InlineData(7, 0, false, "2026-03-03T06:59", "2026-03-02T07:00")]
    [InlineData(15, 0, false, "2026-03-03T16:10", "2026-03-03T15:00")]
    [InlineData(0, 0, false, "2026-03-03T16:10", "2026-03-03T00:00")]
    public void A_time_is_the_last_one_that_a_clock_showed(int hour, int minute, bool ofTwelve, string now, string since) =>
        Clock.Of(new SinceSaid.Clock(hour, minute, ofTwelve), At(now)).ShouldBe(At(since));

    [Theory]
    [InlineData("2026-03-03T16:10", "2026-03-03T15:00", "2026-03-03T07:00")]
    [InlineData("2026-03-03T07:00", "2026-03-03T07:00", "2026-03-02T23:00")]
    [InlineData("2026-03-03T03:00", "2026-03-02T23:00", "2026-03-02T15:00")]
    public void This_shift_and_the_last(string now, string present, string last)
    {
        Clock.Of(new SinceSaid.Shift(IsLast: false), At(now)).ShouldBe(At(present));
        Clock.Of(new SinceSaid.Shift(IsLast: true), At(now)).ShouldBe(At(last));
    }

    /// <summary>On 8 March 2026 clocks in Chicago went from 2:00 to 3:00.</summary>
    [Fact]
    public void A_shift_over_the_change_of_the_clocks_begins_by_the_clock_on_the_wall() =>
        Clock.Began(new DateTimeOffset(2026, 3, 8, 4, 0, 0, TimeSpan.FromHours(-5))).ShouldBe(new DateTimeOffset(2026, 3, 7, 23, 0, 0, TimeSpan.FromHours(-6)));

    private static DateTimeOffset At(string local) =>
        new(DateTime.Parse(local, System.Globalization.CultureInfo.InvariantCulture), TimeSpan.FromHours(-6));
}
