using HandsFree.Audio.Levels;

namespace HandsFree.Audio.Endpointing;

/// <summary>The detector for machines without a model: sound that stands out of the noise floor is speech where it is voiced, and may go on
/// being speech where it is not. It takes other people's voices, music and barking for speech as well.</summary>
public sealed class EnergySpeechDetector : ISpeechDetector
{
    /// <summary>Sound this far above the floor is as likely speech as not.</summary>
    private const double EvenChanceDecibel = 6;
    private const double SlopeDecibel = 1.5;

    /// <summary>A floor below this counts as this, so that the first faint noise after digital silence is not speech.</summary>
    private const double LowestFloorDbfs = -70;

    /// <summary>Measured: noise and synthetic breath stay below 0.29 (99.5 % of frames), every recording of a word reaches 0.50 somewhere.</summary>
    private const double VoicedFrom = 0.4;

    /// <summary>Samples whose voicing is measured: two periods of the lowest voice need a little more than a frame; a longer stretch
    /// misses falling pitch.</summary>
    private const int VoicingSamples = 640;

    /// <summary>What an unvoiced frame can reach: too little to begin speech, enough to go on with it.</summary>
    private const float MostUnvoiced = 0.42f;

    /// <summary>A one-pole high-pass at about 130 Hz against hum and rumble.</summary>
    private const double HighPass = 0.95;

    private readonly NoiseFloor _floor = new();
    private readonly float[] _recent = new float[VoicingSamples];
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
        Span<float> filtered = recent[^frame.Length..];
        for (int i = 0; i < frame.Length; i++)
        {
            _lastOut = HighPass * (_lastOut + frame[i] - _lastIn);
            _lastIn = frame[i];
            filtered[i] = (float)_lastOut;
        }

        double level = LevelMeter.RmsDbfs(filtered);
        double above = level - Math.Max(LowestFloorDbfs, _floor.Next(level));
        float probability = (float)(1 / (1 + Math.Exp((EvenChanceDecibel - above) / SlopeDecibel)));
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
    public void Accustom(ReadOnlySpan<float> recording)
    {
        Reset();
        for (; recording.Length >= ISpeechDetector.FrameSamples; recording = recording[ISpeechDetector.FrameSamples..])
        {
            Probability(recording[..ISpeechDetector.FrameSamples]);
        }

        _floor.TrustWhatWasHeard();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        // Holds nothing outside managed memory.
    }
}
