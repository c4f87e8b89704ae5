using HandsFree.Audio.Wav;

namespace HandsFree.Benchmarks.Tests.Recordings;

/// <summary>A folder of recordings that goes away with the test.</summary>
internal sealed class RecordingFolder : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("handsfree-recordings-");

    public string FullPath => folder.FullName;

    /// <summary>Writes the table.</summary>
    public RecordingFolder Table(params string[] lines)
    {
        File.WriteAllLines(Path.Combine(FullPath, "transcripts.tsv"), lines);
        return this;
    }

    /// <summary>Writes a recording of a second of a buzz.</summary>
    public RecordingFolder Recording(string name, double hertz = 150)
    {
        WavWriter.Write(Path.Combine(FullPath, name), Buzz(hertz));
        return this;
    }

    /// <summary>A voice-like buzz between two quiet stretches of a third of a second, as the file will hold it.</summary>
    public static float[] Buzz(double hertz)
    {
        float[] samples = new float[16_000];
        for (int i = 5_000; i < 11_000; i++)
        {
            for (int harmonic = 1; harmonic <= 20; harmonic++)
            {
                samples[i] += (float)(0.1 * Math.Sin(2 * Math.PI * hertz * harmonic * i / 16_000) / harmonic);
            }

            samples[i] = MathF.Round(samples[i] * 32_768) / 32_768;
        }

        return samples;
    }

    public void Dispose() => folder.Delete(recursive: true);
}
