namespace HandsFree.App.Live;

/// <summary>A clock in the home's time zone.</summary>
/// <param name="clock">The clock.</param>
/// <param name="zone">The home's.</param>
internal sealed class HomeClock(TimeProvider clock, TimeZoneInfo zone) : TimeProvider
{
    /// <inheritdoc/>
    public override TimeZoneInfo LocalTimeZone => zone;

    /// <inheritdoc/>
    public override long TimestampFrequency => clock.TimestampFrequency;

    /// <inheritdoc/>
    public override DateTimeOffset GetUtcNow() => clock.GetUtcNow();

    /// <inheritdoc/>
    public override long GetTimestamp() => clock.GetTimestamp();

    /// <inheritdoc/>
    public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period) =>
        clock.CreateTimer(callback, state, dueTime, period);
}
