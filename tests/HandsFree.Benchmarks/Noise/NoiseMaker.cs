using HandsFree.Audio.Noise;
using HandsFree.Audio.Wav;

namespace HandsFree.Benchmarks.Noise;

/// <summary>Noise under recordings: pink, babble of other recordings of the folder, or a file; the level is measured on speech.</summary>
/// <param name="Kind">"pink", "babble" or the path of a WAV file.</param>
/// <param name="SnrDb">Speech above noise, dB.</param>
/// <param name="Seed">Of the noise.</param>
internal sealed record NoiseMaker(string Kind, double SnrDb, int Seed)
{
    /// <summary>Recordings that the voices of the babble are drawn from.</summary>
    private const int Voices = 12;

    /// <summary>The recording with the noise; each recording gets its own piece.</summary>
    public float[] Under(float[] speech, int index, string folder, IReadOnlyList<string> files)
    {
        int seed = Seed + (index * 7919);
        float[] noise = Kind switch
        {
            "pink" => PinkNoise.Make(speech.Length, seed, -30),
            "babble" => Babble.Make(speech.Length, seed, [.. Others(index, seed, files).Select(f => Read(Path.Combine(folder, f)))]),
            _ => Cut(Read(Kind), speech.Length, new Random(seed)),
        };
        return Mixer.AddNoise(speech, noise, SnrDb);
    }

    private static IEnumerable<string> Others(int index, int seed, IReadOnlyList<string> files)
    {
        var random = new Random(seed);
        return Enumerable.Range(0, Voices).Select(_ => files[(index + 1 + random.Next(files.Count - 1)) % files.Count]);
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

    private static float[] Read(string path) =>
        WavReader.Read(path) is { Clip.Samples: { Length: > 0 } samples } ? samples : throw new IOException($"{path} can't be read as noise");
}
