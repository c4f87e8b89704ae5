using HandsFree.Audio;
using HandsFree.Audio.Levels;
using HandsFree.Audio.Noise;
using HandsFree.Benchmarks.Dictations.Saying;

namespace HandsFree.Benchmarks.Dictations.Sound;

/// <summary>From an utterance to samples: every speaker brought to one level, noise from 300 ms before the speech to 300 ms after it.
/// Between utterances the room is quiet, so that an utterance always sounds the same.</summary>
/// <param name="voices">Who speaks.</param>
/// <param name="noise">The noise, or null.</param>
internal sealed class Acoustics(IVoiceBox voices, RoomNoise? noise)
{
    private const double SpeechDbfs = -26;
    private const double CoughDbfs = -24;
    private static readonly TimeSpan Margin = TimeSpan.FromMilliseconds(300);
    private static readonly TimeSpan CoughLength = TimeSpan.FromMilliseconds(280);

    private readonly Dictionary<Utterance, float[]> made = [];
    private IReadOnlyList<float[]>? talkers;

    /// <summary>The sound of it.</summary>
    public float[] Sound(Utterance utterance)
    {
        if (!made.TryGetValue(utterance, out float[]? samples))
        {
            samples = Make(utterance);
            made.Add(utterance, samples);
        }

        return samples;
    }

    private float[] Make(Utterance utterance)
    {
        float[] plain = utterance.Voice == Utterance.Cough ? Cough(utterance) : voices.Speak(utterance.Voice, utterance.Text).ToArray();
        double level = utterance.Voice == Utterance.Cough ? CoughDbfs : SpeechDbfs + utterance.Decibels;
        Gain.Apply(plain, LevelMeter.ToAmplitude(level - SpeechLevel.ActiveDbfs(plain)));
        if (noise is null)
        {
            return plain;
        }

        int margin = SampleTime.Samples(Margin);
        float[] sound = new float[plain.Length + (2 * margin)];
        plain.CopyTo(sound, margin);
        int seed = Steady.Number("noise", utterance.Voice, utterance.Text, utterance.Variant);
        float[] under = noise.Kind switch
        {
            "pink" => PinkNoise.Make(sound.Length, seed, -30),
            "babble" => Babble.Make(sound.Length, seed, talkers ??= Talkers()),
            _ => throw new ArgumentException($"no noise is called {noise.Kind}; use pink or babble"),
        };

        // The noise is as loud as the room's, however loud the speaker is.
        return Mixer.AddNoise(sound, under, noise.SnrDecibels + level - SpeechDbfs);
    }

    private static float[] Cough(Utterance utterance)
    {
        float[] burst = WhiteNoise.Make(SampleTime.Samples(CoughLength), Steady.Number("cough", utterance.Text));
        for (int i = 0; i < burst.Length; i++)
        {
            double at = (double)i / burst.Length;
            burst[i] *= (float)(Math.Min(1, at * 20) * Math.Exp(-4 * at));
        }

        return burst;
    }

    // Two sentences of each of some voices, which nobody in the simulated room says.
    private IReadOnlyList<float[]> Talkers()
    {
        string[] texts = ["the doctor will come on thursday morning at nine", "she told me that the garden was full of roses this year"];
        return [.. voices.Names.Take(12).SelectMany(voice => texts.Select(text => voices.Speak(voice, text)))];
    }
}
