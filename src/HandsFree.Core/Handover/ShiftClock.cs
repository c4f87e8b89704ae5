using HandsFree.Core.Meanings;

namespace HandsFree.Core.Handover;

/// <summary>When the home's shifts begin.</summary>
/// <param name="Zone">The home's time zone.</param>
/// <param name="Begins">One or more times of day, in order.</param>
public sealed record ShiftClock(TimeZoneInfo Zone, IReadOnlyList<TimeOnly> Begins)
{
    /// <summary>The moment in the home's time zone.</summary>
    public DateTimeOffset Here(DateTimeOffset moment) => TimeZoneInfo.ConvertTime(moment, Zone);

    /// <summary>When the shift of a moment began.</summary>
    public DateTimeOffset Began(DateTimeOffset moment)
    {
        DateTime local = Here(moment).DateTime;
        TimeOnly[] today = [.. Begins.Where(begin => begin <= TimeOnly.FromDateTime(local))];
        return today.Length > 0
            ? InZone(local.Date + today[^1].ToTimeSpan())
            : InZone(local.Date.AddDays(-1) + Begins[^1].ToTimeSpan());
    }

    /// <summary>The beginning that was said.</summary>
    /// <param name="said">What was said.</param>
    /// <param name="now">The present moment.</param>
    public DateTimeOffset Of(SinceSaid said, DateTimeOffset now) => said switch
    {
        SinceSaid.Shift { IsLast: true } => Began(Began(now).AddMinutes(-1)),
        SinceSaid.Shift => Began(now),
        SinceSaid.Clock clock => Last(clock, now),
        _ => throw new ArgumentOutOfRangeException(nameof(said), said, "no such beginning"),
    };

    private DateTimeOffset Last(SinceSaid.Clock clock, DateTimeOffset now)
    {
        DateTime local = Here(now).DateTime;
        int every = clock.OfTwelve ? 12 : 24;
        DateTime shown = local.Date.AddDays(1) + new TimeSpan(clock.Hour % every, clock.Minute, 0);
        while (shown > local)
        {
            shown = shown.AddHours(-every);
        }

        return InZone(shown);
    }

    private DateTimeOffset InZone(DateTime local) => new(local, Zone.GetUtcOffset(local));
}
