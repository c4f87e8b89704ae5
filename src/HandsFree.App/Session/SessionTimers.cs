namespace HandsFree.App.Session;

/// <summary>The dialogue's timers; each comes back as an event. Used by the session loop alone.</summary>
internal sealed class SessionTimers(TimeProvider time, EventQueue queue) : IDisposable
{
    private readonly Dictionary<string, (int Start, ITimer Timer)> running = [];
    private int starts;

    /// <summary>Starts a timer, or starts it anew.</summary>
    public void Start(string name, TimeSpan after)
    {
        Stop(name);
        int start = ++starts;
        ITimer timer = time.CreateTimer(
            _ => queue.Post(new SessionEvent.TimerElapsed(name, start)), null, after, Timeout.InfiniteTimeSpan);
        running.Add(name, (start, timer));
    }

    /// <summary>Stops a timer if it runs.</summary>
    public void Stop(string name)
    {
        if (running.Remove(name, out var entry))
        {
            entry.Timer.Dispose();
        }
    }

    /// <summary>Whether an elapsed timer is one that runs: true once, and it runs no more.</summary>
    public bool Take(SessionEvent.TimerElapsed elapsed)
    {
        if (!running.TryGetValue(elapsed.Name, out var entry) || entry.Start != elapsed.Start)
        {
            return false;
        }

        Stop(elapsed.Name);
        return true;
    }

    /// <summary>Stops them all.</summary>
    public void Dispose()
    {
        foreach (string name in running.Keys.ToList())
        {
            Stop(name);
        }
    }
}
