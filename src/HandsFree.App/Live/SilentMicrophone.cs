using HandsFree.App.Session;

namespace HandsFree.App.Live;

/// <summary>No microphone: nothing is ever heard, the keys do everything.</summary>
internal sealed class SilentMicrophone : IMicrophone
{
    /// <inheritdoc/>
    public MicrophoneFrame? Read(CancellationToken stop)
    {
        stop.WaitHandle.WaitOne();
        throw new OperationCanceledException(stop);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        // Holds no device.
    }
}
