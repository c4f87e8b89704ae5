using HandsFree.Audio.Endpointing;
using Xunit;

namespace HandsFree.Audio.Tests.Endpointing;

/// <summary>Says what the script says: each letter is one frame, S speech (0.9), s soft speech (0.9), m between the thresholds (0.4), anything else quiet (0.1);
/// quiet after the script's end.</summary>
internal sealed class ScriptedDetector(string script) : ISpeechDetector
{
    private int _at;

    public string Name => "scripted";

    public int Resets { get; private set; }

    public float Probability(ReadOnlySpan<float> frame)
    {
        Assert.Equal(ISpeechDetector.FrameSamples, frame.Length);
        char letter = _at < script.Length ? script[_at] : '.';
        _at++;
        return letter switch { 'S' or 's' => 0.9f, 'm' => 0.4f, _ => 0.1f };
    }

    public void Reset() => Resets++;

    public void Accustom(ReadOnlySpan<float> recording) => _at = 0;

    public void Dispose()
    {
    }
}
