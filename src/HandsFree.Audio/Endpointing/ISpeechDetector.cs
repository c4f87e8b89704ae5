namespace HandsFree.Audio.Endpointing;

/// <summary>The port of the speech detectors: how likely each frame of 32 ms is speech. One detector serves one stream and one thread.</summary>
public interface ISpeechDetector : IDisposable
{
    /// <summary>Samples of one frame at 16 kHz: 512, which is 32 ms.</summary>
    public const int FrameSamples = 512;

    /// <summary>"silero" or "energy".</summary>
    string Name { get; }

    /// <summary>Takes the stream's next frame.</summary>
    /// <param name="frame">Exactly <see cref="FrameSamples"/> samples, in [-1, 1].</param>
    /// <returns>Probability of speech, 0 to 1.</returns>
    /// <exception cref="ArgumentException">Another length.</exception>
    float Probability(ReadOnlySpan<float> frame);

    /// <summary>Forgets the stream; the next one is taken to begin after quiet.</summary>
    void Reset();

    /// <summary>Forgets the stream and gets used to the noise of a recording that will be judged next.</summary>
    /// <param name="recording">All of it, 16 kHz mono in [-1, 1].</param>
    void Accustom(ReadOnlySpan<float> recording);
}
