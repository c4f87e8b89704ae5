using HandsFree.App.Session;

namespace HandsFree.App.Live;

/// <summary>No loudspeaker: what is said is only shown.</summary>
/// <param name="why">Why there is none.</param>
internal sealed class SilentLoudspeaker(string why) : ILoudspeaker
{
    /// <inheritdoc/>
    public TimeSpan Latency => TimeSpan.Zero;

    /// <inheritdoc/>
    public string WhySilent => why;

    /// <inheritdoc/>
    public bool IsPlaying => false;

    /// <inheritdoc/>
    public void Connect(IPlaybackWatch watch)
    {
        // Nothing is ever played.
    }

    /// <inheritdoc/>
    public void Play(IReadOnlyList<float> samples)
    {
        // Nobody hears it; the text is shown.
    }

    /// <inheritdoc/>
    public void Silence()
    {
        // It is silent.
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        // Holds no device.
    }
}
