using System.Globalization;
using HandsFree.Audio.Wav;
using HandsFree.Speech.Words;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Words;

/// <summary>Against the encoder of the Python package transformers 5.17 in PyTorch 2.11 with the weights as floats
/// (tests/HandsFree.Training/reference.py; run on 1 December 2026): another program's arithmetic on the same clip.</summary>
public sealed class ReferenceLogitsTests
{
    private static readonly (int Row, int Place, float Logit)[] Expected = [.. File
        .ReadLines(Path.Combine(Shared.Repository, "tests", "HandsFree.Speech.Tests", "Words", "reference-logits.tsv")).Skip(1)
        .Select(line => line.Split('\t'))
        .Select(r => (Number(r[0]), Number(r[1]), float.Parse(r[2], CultureInfo.InvariantCulture)))];

    /// <summary>Arithmetic in 8 bits is not that of floats: the logits of 14 differ by less than 1, and on average by less than 0.15.</summary>
    [Fact]
    public void Logits_are_those_of_the_encoder_in_floats()
    {
        float[] samples = WavReader.Read(Path.Combine(Shared.Repository, "demo-audio-synthetic", "pulse-seven-six-rms.wav")).Clip!.Samples;
        using WordsModel model = WordsModel.Load(1);

        float[] logits = model.Run(samples);

        (logits.Length / model.Width).ShouldBe(Expected[^1].Row + 1);
        Expected.Length.ShouldBeGreaterThan(150);
        Expected.Average(e => Math.Abs(logits[(e.Row * model.Width) + e.Place] - e.Logit)).ShouldBeLessThan(0.15f);
        foreach (var (row, place, logit) in Expected)
        {
            logits[(row * model.Width) + place].ShouldBe(logit, 1f, $"row {row}, place {place}");
        }

        Greedy.Text(logits, model.Width, model.Words.At).ShouldBe("pulse seven six");
    }

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
