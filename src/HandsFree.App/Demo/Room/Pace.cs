namespace HandsFree.App.Demo.Room;

/// <summary>Lets the room's time pass as fast as the real one, or as fast as it can. What took longer to work out is not made up for.</summary>
internal sealed class Pace(TimeProvider real, bool fast)
{
    private TimeSpan ahead;
    private long since = real.GetTimestamp();

    /// <summary>So much of the room's time passes.</summary>
    public void Pass(TimeSpan time, CancellationToken stop)
    {
        if (fast)
        {
            return;
        }

        ahead += time - real.GetElapsedTime(since);
        since = real.GetTimestamp();
        if (ahead > TimeSpan.Zero)
        {
            stop.WaitHandle.WaitOne(ahead);
        }
        else
        {
            ahead = TimeSpan.Zero;
        }
    }
}
