using System.Globalization;
using HandsFree.Audio.Wav;
using HandsFree.Speech.Neural;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Neural;

/// <summary>Greedy decoding against a reference: encoder frames, tokens and log probability of 72 recordings, made with the model's
/// files as they are distributed, by another implementation (Python, onnxruntime). Tolerance of the log probability 0.05.</summary>
public sealed class ReferenceDecodeTests
{
    private const double Tolerance = 0.05;

    [Fact]
    public void The_prepared_model_decodes_72_recordings_as_the_distributed_one_does()
    {
        string[][] reference = [.. File.ReadLines(Path.Combine(Shared.Repository, "tests", "HandsFree.Speech.Tests", "Neural", "reference-decode.tsv"))
            .Skip(1).Select(line => line.Split('\t'))];
        reference.Length.ShouldBe(72);
        string audio = Shared.Audio("");
        using NeuralModel model = NeuralModel.Load(NeuralFiles.Folder, NeuralFiles.Cache, threads: 2);

        var differences = new List<string>();
        foreach (string[] row in reference)
        {
            float[] samples = WavReader.Read(Path.Combine(audio, row[0])).Clip!.Samples;
            var (frames, tokens, logProbability) = Greedy(model, samples);
            if (frames != int.Parse(row[1], CultureInfo.InvariantCulture) || string.Join(' ', tokens) != row[2].Trim()
                || Math.Abs(logProbability - double.Parse(row[4], CultureInfo.InvariantCulture)) > Tolerance)
            {
                differences.Add($"{row[0]}: {frames} frames, [{string.Join(' ', tokens)}], {logProbability:F3}; expected {string.Join(" | ", row[1..])}");
            }
        }

        differences.ShouldBeEmpty();
    }

    private static (int Frames, List<int> Tokens, double LogProbability) Greedy(NeuralModel model, float[] samples)
    {
        using var state = new DecoderState(model, samples, 1);
        var tokens = new List<int>();
        double sum = 0;
        var next = new LogSoftmax(state.First());
        for (int step = 0; step < 64; step++)
        {
            sum += next[next.Best];
            if (next.Best == Vocabulary.End)
            {
                break;
            }

            tokens.Add(next.Best);
            (int Parent, int Token)[] row = [(0, next.Best)];
            next = new LogSoftmax(state.Step(row));
        }

        return (state.Frames, tokens, sum);
    }
}
