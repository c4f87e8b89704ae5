using System.Threading.Channels;

namespace HandsFree.App.Session;

/// <summary>The session's one queue. Bounded; who posts into a full one waits (sound waits in the microphone meanwhile), so that no
/// event is lost and none overtakes another; how often somebody had to wait is counted. The loop itself never posts.</summary>
internal sealed class EventQueue
{
    /// <summary>Events that wait at most.</summary>
    public const int Capacity = 256;

    private readonly Channel<SessionEvent> channel = Channel.CreateBounded<SessionEvent>(
        new BoundedChannelOptions(Capacity) { FullMode = BoundedChannelFullMode.Wait, SingleReader = true });

    private readonly Lock gate = new();
    private TaskCompletionSource idle = Completed();
    private int open;
    private int waits;
    private int late;

    /// <summary>How often somebody found the queue full and waited.</summary>
    public int Waits => Volatile.Read(ref waits);

    /// <summary>Events that came after the end and were dropped.</summary>
    public int Late => Volatile.Read(ref late);

    /// <summary>Posts an event; waits while the queue is full.</summary>
    public void Post(SessionEvent happened)
    {
        Opened();
        if (channel.Writer.TryWrite(happened))
        {
            return;
        }

        try
        {
            Interlocked.Increment(ref waits);
            channel.Writer.WriteAsync(happened).AsTask().GetAwaiter().GetResult();
        }
        catch (ChannelClosedException)
        {
            Interlocked.Increment(ref late);
            Done();
        }
    }

    /// <summary>The next event; waits for it. <see cref="Done"/> is to follow once it has been handled.</summary>
    public SessionEvent Take(CancellationToken stop) => channel.Reader.ReadAsync(stop).AsTask().GetAwaiter().GetResult();

    /// <summary>The event that was taken has been handled.</summary>
    public void Done()
    {
        lock (gate)
        {
            if (--open == 0)
            {
                idle.SetResult();
            }
        }
    }

    /// <summary>Nothing is taken any more.</summary>
    public void Close()
    {
        channel.Writer.TryComplete();
        while (channel.Reader.TryRead(out _))
        {
            Done();
        }
    }

    /// <summary>Waits until all that was posted has been handled.</summary>
    public void WaitUntilIdle(CancellationToken stop)
    {
        Task done;
        lock (gate)
        {
            done = idle.Task;
        }

        done.Wait(stop);
    }

    private void Opened()
    {
        lock (gate)
        {
            if (open++ == 0)
            {
                idle = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
            }
        }
    }

    private static TaskCompletionSource Completed()
    {
        TaskCompletionSource done = new();
        done.SetResult();
        return done;
    }
}
