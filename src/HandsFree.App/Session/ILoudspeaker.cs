namespace HandsFree.App.Session;

/// <summary>Where the program's voice goes to: plays in order what it is given, and tells when it began and when all has been
/// played.</summary>
internal interface ILoudspeaker : IDisposable
{
    /// <summary>From "played" to the ear: what the device still holds back. Zero or more.</summary>
    TimeSpan Latency { get; }

    /// <summary>Null, or why nothing can be heard now; what is given to play then is dropped.</summary>
    string? WhySilent => null;

    /// <summary>Whether something is playing or waits to be played.</summary>
    bool IsPlaying { get; }

    /// <summary>Names who is told; once, before the first sound.</summary>
    void Connect(IPlaybackWatch watch);

    /// <summary>Plays after what is playing already.</summary>
    /// <param name="samples">16 kHz mono in [-1, 1]; at least one.</param>
    void Play(IReadOnlyList<float> samples);

    /// <summary>Ends what is playing and drops what waits.</summary>
    void Silence();
}
