namespace HandsFree.App.Session;

/// <summary>Waits for quiet to last for the home's time. Used by the session loop alone.</summary>
internal sealed class QuietWatch(TimeProvider time, EventQueue queue) : IDisposable
{
    private ITimer? timer;
    private int watch;

    /// <summary>Begins to wait, anew where it waits already.</summary>
    public void Begin(TimeSpan quiet)
    {
        Stop();
        int mine = watch;
        timer = time.CreateTimer(_ => queue.Post(new SessionEvent.QuietOver(mine)), null, quiet, Timeout.InfiniteTimeSpan);
    }

    /// <summary>Waits no more; what is under way already is void.</summary>
    public void Stop()
    {
        watch++;
        timer?.Dispose();
        timer = null;
    }

    /// <summary>Whether this is the quiet that is waited for: true once.</summary>
    public bool Take(SessionEvent.QuietOver over)
    {
        if (over.Watch != watch)
        {
            return false;
        }

        Stop();
        return true;
    }

    /// <inheritdoc/>
    public void Dispose() => Stop();
}
