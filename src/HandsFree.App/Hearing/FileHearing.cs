using HandsFree.Audio;
using HandsFree.Audio.Endpointing;

namespace HandsFree.App.Hearing;

/// <summary>Finds the speech in a recording of one utterance: with Silero where it is there; where Silero finds less than any word is
/// long, as in a whisper, with the energy of the sound.</summary>
public sealed class FileHearing : IDisposable
{
    /// <summary>The shortest words of the grammars take longer.</summary>
    private static readonly TimeSpan ShorterThanAWord = TimeSpan.FromSeconds(0.2);

    private readonly DetectorChoice best;
    private readonly EnergySpeechDetector second = new();

    /// <summary>With the detector's model at a place.</summary>
    /// <param name="sileroModel">Path of silero_vad_v6.onnx; where it is not there, the energy alone decides.</param>
    public FileHearing(string? sileroModel) => best = DetectorChoice.Best(sileroModel);

    /// <summary>The detector that is asked first: "silero" or "energy".</summary>
    public string DetectorName => best.Detector.Name;

    /// <summary>Why it is not Silero, in one line, or null.</summary>
    public string? WhyNotBetter => best.WhyNotBetter;

    /// <summary>The speech with the quiet around it; null where there is none.</summary>
    public SpeechSegment? Speech(AudioClip clip)
    {
        ArgumentNullException.ThrowIfNull(clip);
        SpeechSegment? found = WholeFileSegmenter.Segment(best.Detector, clip.Samples);
        return found?.SpeechTime >= ShorterThanAWord || best.Detector is EnergySpeechDetector
            ? found
            : WholeFileSegmenter.Segment(second, clip.Samples) ?? found;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        best.Detector.Dispose();
        second.Dispose();
    }
}
