using Microsoft.Extensions.Time.Testing;

namespace HandsFree.App.Demo.Room;

/// <summary>The time of the made-up home: it passes with the sound that is played and heard, and as fast as that can be worked out.</summary>
internal sealed class DemoClock : FakeTimeProvider
{
    /// <summary>A clock.</summary>
    /// <param name="begins">Its first moment.</param>
    /// <param name="zone">The home's time zone.</param>
    public DemoClock(DateTimeOffset begins, TimeZoneInfo zone)
        : base(begins) => SetLocalTimeZone(zone);
}
