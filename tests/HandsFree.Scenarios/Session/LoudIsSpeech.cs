using HandsFree.Audio.Endpointing;

namespace HandsFree.Scenarios.Session;

/// <summary>Takes every loud sound for speech, whoever makes it.</summary>
internal sealed class LoudIsSpeech : ISpeechDetector
{
    public string Name => "loud";

    public float Probability(ReadOnlySpan<float> frame)
    {
        float peak = 0;
        foreach (float sample in frame)
        {
            peak = Math.Max(peak, Math.Abs(sample));
        }

        return peak > 0.05f ? 1 : 0;
    }

    public void Accustom(ReadOnlySpan<float> frame)
    {
        // Has no noise floor.
    }

    public void Reset()
    {
        // Remembers nothing.
    }

    public void Dispose()
    {
        // Holds nothing.
    }
}
