using HandsFree.Audio.Levels;
using HandsFree.Audio.Noise;

namespace HandsFree.Audio.Tests.Endpointing;

/// <summary>Sounds of a person or a room that are no speech, over faint pink noise.</summary>
internal static class NoSpeechSounds
{
    private const double RoomDbfs = -60;

    /// <summary>0.6 s of noise from about 600 Hz to 1 kHz and above, swelling and fading.</summary>
    public static float[] Breath(double rmsDbfs)
    {
        float[] breath = WhiteNoise.Make(9_600, 17);
        double low = 0;
        double high = 0;
        double before = 0;
        for (int i = 0; i < breath.Length; i++)
        {
            low += 0.35 * (breath[i] - low);
            high = 0.8 * (high + low - before);
            before = low;
            breath[i] = (float)(high * (0.5 - (0.5 * Math.Cos(2 * Math.PI * i / breath.Length))));
        }

        Gain.ToRms(breath, rmsDbfs);
        return Over(breath);
    }

    /// <summary>A knock of 40 samples that rings at half the sample rate.</summary>
    public static float[] Click() => Over([.. Enumerable.Range(0, 40).Select(i => (float)(0.8 * Math.Pow(-0.8, i)))]);

    private static float[] Over(float[] sound)
    {
        float[] samples = PinkNoise.Make(64_000, 23, RoomDbfs);
        for (int i = 0; i < sound.Length; i++)
        {
            samples[24_000 + i] += sound[i];
        }

        return samples;
    }
}
