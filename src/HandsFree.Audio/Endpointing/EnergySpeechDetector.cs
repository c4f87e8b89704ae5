using HandsFree.Audio.Levels;

namespace HandsFree.Audio.Endpointing;

/// <summary>The detector for machines without a model: sound that stands out of the noise floor is speech where it is voiced, and may go on
/// being speech where it is not. It takes other people's voices, music and barking for speech as well.</summary>
public sealed class EnergySpeechDetector : ISpeechDetector
{
    /// <summary>Sound this far above the floor is as likely speech as not.</summary>
    private const double EvenChanceDecibel = 8;
    private const double SlopeDecibel = 1.5;

    /// <summary>Softer sound is never speech.</summary>
    private const double SoftestDbfs = -62;

    private const double VoicedFrom = 0.55;

    /// <summary>What an unvoiced frame can reach: too little to begin speech, enough to go on with it.</summary>
    private const float MostUnvoiced = 0.42f;

    /// <summary>A one-pole high-pass at about 130 Hz against hum and rumble.</summary>
    private const double HighPass = 0.95;

    private readonly NoiseFloor _floor = new();
    private readonly float[] _recent = new float[2 * ISpeechDetector.FrameSamples];
    private double _lastIn;
    private double _lastOut;

    /// <inheritdoc/>
    public string Name => "energy";

    /// <inheritdoc/>
    public float Probability(ReadOnlySpan<float> frame)
    {
        SpeechFrame.Require(frame);
        Span<float> recent = _recent;
        recent[frame.Length..].CopyTo(recent);
        Span<float> filtered = recent[frame.Length..];
        for (int i = 0; i < frame.Length; i++)
        {
            _lastOut = HighPass * (_lastOut + frame[i] - _lastIn);
            _lastIn = frame[i];
            filtered[i] = (float)_lastOut;
        }

        double level = LevelMeter.RmsDbfs(filtered);
        double above = level - _floor.Next(level);
        float probability = level < SoftestDbfs ? 0 : (float)(1 / (1 + Math.Exp((EvenChanceDecibel - above) / SlopeDecibel)));
        return probability > MostUnvoiced && Voicing.Of(_recent) < VoicedFrom ? MostUnvoiced : probability;
    }

    /// <inheritdoc/>
    public void Reset()
    {
        _floor.Reset();
        Array.Clear(_recent);
        _lastIn = 0;
        _lastOut = 0;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        // Holds nothing outside managed memory.
    }
}
