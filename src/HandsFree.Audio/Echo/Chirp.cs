using HandsFree.Audio.Levels;

namespace HandsFree.Audio.Echo;

/// <summary>A sweep whose time of arrival can be told exactly, also in noise: its correlation with itself is one narrow peak.</summary>
public static class Chirp
{
    private const double FromHertz = 500;
    private const double ToHertz = 4_000;
    private const double PeakDbfs = -12;

    /// <summary>Its length, 200 ms.</summary>
    public static TimeSpan Length { get; } = TimeSpan.FromMilliseconds(200);

    /// <summary>A linear sweep from 500 to 4,000 Hz, -12 dBFS, with edges of 10 ms, 16 kHz mono.</summary>
    public static float[] Make()
    {
        float[] chirp = new float[SampleTime.Samples(Length)];
        int edge = AudioClip.SampleRate / 100;
        double peak = LevelMeter.ToAmplitude(PeakDbfs);
        for (int i = 0; i < chirp.Length; i++)
        {
            double seconds = (double)i / AudioClip.SampleRate;
            double phase = 2 * Math.PI * ((FromHertz * seconds) + ((ToHertz - FromHertz) * seconds * seconds / (2 * Length.TotalSeconds)));
            double rise = Math.Min(1, Math.Min(i, chirp.Length - 1 - i) / (double)edge);
            chirp[i] = (float)(peak * rise * Math.Sin(phase));
        }

        return chirp;
    }
}
