using System.Globalization;
using HandsFree.Speech.Small;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Small;

/// <summary>The same sound through the training's own code (Python with PyTorch: tests/HandsFree.Training/vectors.py) and through this
/// one: log-mel values and, with the weights that are built in, logits.</summary>
public sealed class TrainingVectorsTests
{
    private static readonly (string What, int Frame, int Place, double Value)[] Expected = [.. File
        .ReadLines(Path.Combine(Shared.Repository, "tests", "HandsFree.Speech.Tests", "Small", "training-vectors.tsv")).Skip(1)
        .Select(line => line.Split('\t'))
        .Select(r => (r[0], Number(r[1]), Number(r[2]), double.Parse(r[3], CultureInfo.InvariantCulture)))];

    [Fact]
    public void Log_mel_values_are_those_of_the_training()
    {
        float[] mel = LogMel.Of(Sound());

        mel.Length.ShouldBe(LogMel.Frames(16000) * LogMel.Bands);
        var rows = Expected.Where(e => e.What == "mel").ToList();
        rows.Count.ShouldBeGreaterThan(40);
        foreach (var (_, frame, band, value) in rows)
        {
            mel[(frame * LogMel.Bands) + band].ShouldBe((float)value, 0.002f, $"frame {frame}, band {band}");
        }
    }

    [Fact]
    public void Logits_are_those_of_the_training()
    {
        using SmallModel model = SmallModel.Load(1);
        float[] logits = model.RunOnMel(LogMel.Of(Sound()));

        var rows = Expected.Where(e => e.What == "logits").ToList();
        rows.Count.ShouldBeGreaterThan(15);
        foreach (var (_, row, place, value) in rows)
        {
            logits[(row * model.Width) + place].ShouldBe((float)value, 0.02f, $"row {row}, place {place}");
        }
    }

    [Fact]
    public void Silence_and_the_first_band_are_where_the_formula_puts_them()
    {
        LogMel.Of(new float[512]).ShouldAllBe(v => v == 2);
        LogMel.Frames(511).ShouldBe(0);
        LogMel.Frames(512).ShouldBe(1);
        LogMel.Frames(512 + 160).ShouldBe(2);
    }

    /// <summary>Two gliding tones with a beat: vectors.py makes the same.</summary>
    private static float[] Sound() => [.. Enumerable.Range(0, 16000).Select(i => i / 16000.0)
        .Select(t => (float)((0.3 * Math.Sin(2 * Math.PI * (200 + (600 * t)) * t) * Math.Sin(2 * Math.PI * 3 * t)) + (0.1 * Math.Sin(2 * Math.PI * (2500 - (800 * t)) * t))))];

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
