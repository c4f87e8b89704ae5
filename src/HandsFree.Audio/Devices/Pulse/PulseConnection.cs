namespace HandsFree.Audio.Devices.Pulse;

/// <summary>One connection to the sound server with a main loop of its own, turned by whoever uses it: no callbacks on foreign
/// threads. Used by one thread at a time.</summary>
internal sealed class PulseConnection : IDisposable
{
    /// <summary>PA_CONTEXT_NOAUTOSPAWN: listing devices starts no server.</summary>
    private const int NoAutoSpawn = 1;

    private readonly TimeProvider time;
    private readonly nint loop;

    private PulseConnection(TimeProvider time)
    {
        this.time = time;
        loop = PulseNative.pa_mainloop_new();
        Context = PulseNative.pa_context_new(PulseNative.pa_mainloop_get_api(loop), "HandsFree");
    }

    /// <summary>The pa_context.</summary>
    internal nint Context { get; }

    /// <summary>Why the connection does not work; null where it does.</summary>
    internal SoundFault? Fault => PulseNative.pa_context_get_state(Context) == PulseContextState.Ready
        ? null
        : PulseFaults.Of(PulseNative.pa_context_errno(Context), "the sound server");

    /// <summary>Connects.</summary>
    /// <param name="server">As PULSE_SERVER names it; null for that, or the user's own.</param>
    /// <param name="time">The clock.</param>
    internal static (PulseConnection? Connection, SoundFault? Fault) Open(string? server, TimeProvider time)
    {
        PulseConnection connection = new(time);
        if (PulseNative.pa_context_connect(connection.Context, server, NoAutoSpawn, 0) >= 0)
        {
            connection.TurnUntil(() => PulseNative.pa_context_get_state(connection.Context) is PulseContextState.Ready or PulseContextState.Failed, Patience.Starting);
        }

        if (connection.Fault is not { } fault)
        {
            return (connection, null);
        }

        connection.Dispose();
        return (null, fault);
    }

    /// <summary>Lets the library work once.</summary>
    /// <param name="wait">At most so long, where there is nothing to do; zero or more.</param>
    internal void Turn(TimeSpan wait)
    {
        if (PulseNative.pa_mainloop_prepare(loop, (int)wait.TotalMicroseconds) >= 0 && PulseNative.pa_mainloop_poll(loop) >= 0)
        {
            _ = PulseNative.pa_mainloop_dispatch(loop); // what went wrong is the context's state
        }
    }

    /// <summary>Lets the library work until something is so, or the time is over.</summary>
    /// <returns>Whether it is so.</returns>
    internal bool TurnUntil(Func<bool> so, TimeSpan atMost)
    {
        long began = time.GetTimestamp();
        while (!so())
        {
            TimeSpan left = atMost - time.GetElapsedTime(began);
            if (left <= TimeSpan.Zero)
            {
                return false;
            }

            Turn(left);
        }

        return true;
    }

    /// <summary>Waits for the end of an operation, and lets it go.</summary>
    internal void Finish(nint operation)
    {
        if (operation != 0)
        {
            TurnUntil(() => PulseNative.pa_operation_get_state(operation) != 0, Patience.Starting);
            PulseNative.pa_operation_unref(operation);
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        PulseNative.pa_context_disconnect(Context);
        PulseNative.pa_context_unref(Context);
        PulseNative.pa_mainloop_free(loop);
    }
}
