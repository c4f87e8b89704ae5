using HandsFree.Audio.Levels;
using HandsFree.Audio.Noise;

namespace HandsFree.Audio.Effects;

/// <summary>A simulated room: the direct sound and a diffuse reverberation that decays exponentially (white Gaussian noise under an exponential:
/// Polack 1988; no single early echoes). The same for the same seed.</summary>
/// <param name="ReverberationTime">Seconds in which the reverberation falls by 60 dB (RT60), above 0.</param>
/// <param name="DirectToReverberantDecibel">Energy of the direct sound less that of the reverberation, dB: falls with the distance from the
/// mouth, 0 at the critical distance.</param>
/// <param name="Seed">Chooses the reverberation's fine structure.</param>
public sealed record Room(double ReverberationTime, double DirectToReverberantDecibel, int Seed)
{
    /// <summary>The impulse response at 16 kHz: 1 at its start, then the decay down to -60 dB.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A time that is not above 0, or above 10 s.</exception>
    public float[] ImpulseResponse()
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(ReverberationTime);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(ReverberationTime, 10);
        float[] response = WhiteNoise.Make(Math.Max(2, (int)(ReverberationTime * AudioClip.SampleRate)), Seed);
        response[0] = 0;
        for (int i = 1; i < response.Length; i++)
        {
            response[i] *= (float)Math.Pow(10, -3.0 * i / (ReverberationTime * AudioClip.SampleRate));
        }

        double energy = response.Sum(sample => (double)sample * sample);
        Gain.Apply(response, Math.Sqrt(Math.Pow(10, -DirectToReverberantDecibel / 10) / energy));
        response[0] = 1;
        return response;
    }

    /// <summary>The speech as it arrives in this room, with the reverberation's tail; the speech as loud as before.</summary>
    /// <param name="samples">16 kHz mono.</param>
    public float[] Apply(ReadOnlySpan<float> samples)
    {
        float[] heard = Convolution.Of(samples, ImpulseResponse());
        Gain.Apply(heard, LevelMeter.ToAmplitude(SpeechLevel.ActiveDbfs(samples) - SpeechLevel.ActiveDbfs(heard)));
        return heard;
    }
}
