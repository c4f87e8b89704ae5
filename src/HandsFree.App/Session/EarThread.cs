namespace HandsFree.App.Session;

/// <summary>The ear on a thread of its own. That it ended, and by which error, comes through the queue.</summary>
internal sealed class EarThread
{
    private readonly Thread thread;

    /// <summary>Starts it.</summary>
    /// <param name="ear">Runs until its microphone ends.</param>
    /// <param name="queue">Gets <see cref="SessionEvent.EarEnded"/>, unless it was stopped.</param>
    /// <param name="stop">Ends it.</param>
    public EarThread(Ear ear, EventQueue queue, CancellationToken stop)
    {
        thread = new Thread(() => Hear(ear, queue, stop)) { IsBackground = true, Name = "ear" };
        thread.Start();
    }

    /// <summary>Waits until it has ended.</summary>
    public void Join() => thread.Join();

    private static void Hear(Ear ear, EventQueue queue, CancellationToken stop)
    {
        Exception? failure = null;
        try
        {
            ear.Run(stop);
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
            return;
        }
#pragma warning disable CA1031 // Whatever broke the ear's thread is thrown again on the session's.
        catch (Exception broken)
#pragma warning restore CA1031
        {
            failure = broken;
        }

        queue.Post(new SessionEvent.EarEnded(failure));
    }
}
