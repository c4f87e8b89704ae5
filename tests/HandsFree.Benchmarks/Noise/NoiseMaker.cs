using HandsFree.Audio.Noise;
using HandsFree.Audio.Wav;
using HandsFree.Benchmarks.Recordings;

namespace HandsFree.Benchmarks.Noise;

/// <summary>Noise under recordings: pink, babble of other speakers of the same folder, or a file. The level of the speech is measured without
/// its pauses; each recording has its own noise, whatever else is heard.</summary>
/// <param name="kind">"pink", "babble" or the path of a WAV file.</param>
/// <param name="snrDb">Speech above noise, dB.</param>
/// <param name="seed">Of the noise.</param>
internal sealed class NoiseMaker(string kind, double snrDb, int seed)
{
    /// <summary>Recordings that the voices of the babble are drawn from.</summary>
    private const int Voices = 12;

    private const double AnyLevel = -30;
    private float[]? file;

    /// <summary>The speech with the noise.</summary>
    /// <param name="speech">16 kHz mono.</param>
    /// <param name="of">The recording that it is.</param>
    /// <param name="folder">All recordings of its folder.</param>
    /// <exception cref="InvalidDataException">Babble of a folder with one speaker, or a file that can't be read.</exception>
    public float[] Under(float[] speech, Transcript of, IReadOnlyList<Transcript> folder)
    {
        int own = ClipSeed.Of(seed, "noise", of.Key);
        float[] noise = kind switch
        {
            "pink" => PinkNoise.Make(speech.Length, own, AnyLevel),
            "babble" => Babble.Make(speech.Length, own, [.. Talkers(own, of, folder).Select(t => Read(t.FilePath))]),
            _ => Cut(file ??= Read(kind), speech.Length, new Random(own)),
        };
        return Mixer.AddNoise(speech, noise, snrDb);
    }

    /// <summary>Whose recordings babble under this one: other speakers' only, never its own.</summary>
    internal static IReadOnlyList<Transcript> Talkers(int seed, Transcript of, IEnumerable<Transcript> folder)
    {
        Transcript[] others = [.. folder.Where(t => t.Speaker != of.Speaker).OrderBy(t => t.File, StringComparer.Ordinal)];
        if (others.Length == 0)
        {
            throw new InvalidDataException($"{of.SetName}: babble is made of other speakers' recordings, and all are {of.Speaker}'s; use --noise pink or a WAV file");
        }

        new Random(seed).Shuffle(others);
        return others[..Math.Min(Voices, others.Length)];
    }

    /// <summary>A piece from anywhere, begun anew where the recording ends.</summary>
    private static float[] Cut(float[] samples, int length, Random random)
    {
        int start = random.Next(samples.Length);
        float[] piece = new float[length];
        for (int i = 0; i < length; i++)
        {
            piece[i] = samples[(start + i) % samples.Length];
        }

        return piece;
    }

    private static float[] Read(string path)
    {
        WavResult read = WavReader.Read(path);
        return !read.IsRead ? throw new InvalidDataException(read.Error)
            : read.Clip.Samples.Length == 0 ? throw new InvalidDataException($"{path}: an empty recording can't be noise")
            : read.Clip.Samples;
    }
}
