namespace HandsFree.App.Session;

/// <summary>Where the sound comes from. It keeps what is captured while nobody reads, within a bound of its own; what it had to drop
/// shows as a gap between the frames' times.</summary>
internal interface IMicrophone : IDisposable
{
    /// <summary>The next frame; waits for it. Null when no more will come.</summary>
    /// <exception cref="OperationCanceledException">The session is over.</exception>
    MicrophoneFrame? Read(CancellationToken stop);
}
