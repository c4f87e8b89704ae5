using HandsFree.Audio.Devices;

namespace HandsFree.App.Live;

/// <summary>One device that may go and come back: opened by the same name again and again, and never another one in its place.</summary>
/// <typeparam name="T">Its stream.</typeparam>
/// <param name="first">The stream that was opened first; null where the device is not there yet.</param>
/// <param name="name">The device that is to come back.</param>
/// <param name="open">Opens a device by name.</param>
/// <param name="retry">How long to wait between two trials.</param>
internal sealed class Returning<T>(T? first, string name, Func<string, (T? Stream, SoundFault? Fault)> open, TimeSpan retry) : IDisposable
    where T : class, IDisposable
{
    /// <summary>The stream; null while the device is gone.</summary>
    public T? Stream { get; private set; } = first;

    /// <summary>The device is gone.</summary>
    public void Lose()
    {
        Stream?.Dispose();
        Stream = null;
    }

    /// <summary>Waits a little, then tries once.</summary>
    /// <returns>Whether it is back.</returns>
    public bool TryAgain(WaitHandle stop)
    {
        if (!stop.WaitOne(retry))
        {
            (Stream, _) = open(name); // why not is known already: it is gone
        }

        return Stream is not null;
    }

    /// <inheritdoc/>
    public void Dispose() => Lose();
}
