namespace HandsFree.Exchange.Tests.Fhir.Server;

/// <summary>A clock on which every pause is over at once, and the two minutes for an answer never are.</summary>
internal sealed class QuickTime : TimeProvider
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period) =>
        base.CreateTimer(callback, state, dueTime == Patience ? Timeout.InfiniteTimeSpan : dueTime == Timeout.InfiniteTimeSpan ? dueTime : TimeSpan.Zero, Timeout.InfiniteTimeSpan);
}
