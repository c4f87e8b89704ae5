using HandsFree.Benchmarks.Statistics;
using static System.FormattableString;

namespace HandsFree.Benchmarks.Results;

/// <summary>Prints the tables of one run.</summary>
internal static class HearingReport
{
    /// <summary>Above this a value counts as sure.</summary>
    public const double Sure = 0.95;

    /// <summary>Bins of the reliability table.</summary>
    public const int Bins = 10;

    /// <summary>What the engine states of its best value, over all recordings in which it found one, also of those that it then refused.</summary>
    public static IReadOnlyList<Prediction> Predictions(IEnumerable<HeardRow> rows) =>
        [.. rows.Where(r => r.Best is not null).Select(r => new Prediction(r.Best!.Probability, r.Best.Right))];

    /// <summary>One line for each recording that was not heard as it was meant.</summary>
    public static string? Line(HeardRow r) => r.Verdict is Verdict.Right or Verdict.Refused ? null
        : Invariant($"{r.Verdict}\t{r.Set}/{r.File}\t{r.Words}\t{r.Outcome} {r.Best?.Meaning?.ToJsonString()}\t\"{r.Transcript}\"\tprobability {r.Best?.Probability:F3} margin {r.Margin:F1}");

    /// <summary>Decoding time over the length of the recordings, of those with speech.</summary>
    public static double RealTimeFactor(IEnumerable<HeardRow> rows)
    {
        HeardRow[] decoded = [.. Decoded(rows)];
        return decoded.Sum(r => r.DecodeMilliseconds) / 1000 / decoded.Sum(r => r.AudioSeconds);
    }

    /// <summary>A quantile of the time from the end of the speech to the hearing, ms.</summary>
    public static double DecodeTime(IEnumerable<HeardRow> rows, double share) => Quantile.Of(Decoded(rows).Select(r => r.DecodeMilliseconds), share);

    /// <summary>One line that says what was run.</summary>
    public static string Settings(HearingResult r) => Invariant(
        $"engine {r.Engine}, {string.Join(" ", r.Sets)}, {r.Date:yyyy-MM-dd HH:mm}Z, seed {r.Seed}, noise {r.Noise ?? "none"}{(r.SnrDb is { } snr ? Invariant($" {snr} dB") : "")}, microphone {r.Microphone ?? "as recorded"}, every {r.Every}, {r.Threads} of {r.Host.Cores} cores");

    /// <summary>Everything.</summary>
    public static void Write(HearingResult result, bool bySpeaker, TextWriter output)
    {
        Counts("kind of utterance", result.Rows, r => r.Kind, output);
        if (bySpeaker)
        {
            output.WriteLine();
            Counts("speaker", result.Rows, r => r.Speaker, output);
            output.WriteLine();
            SpeakersCalibration(result.Rows, output);
        }

        output.WriteLine(Invariant(
            $"Intervals: 95 %, Wilson. So few recordings prove little: none of {result.Rows.Count} is up to {100 * Wilson.Interval(0, result.Rows.Count).High:0.0} %."));
        output.WriteLine();
        Reliability(result.Rows, output);
        output.WriteLine();
        WrongOnes(result.Rows, output);
        Times(result, output);
    }

    private static void Counts(string title, IReadOnlyList<HeardRow> rows, Func<HeardRow, string> by, TextWriter output)
    {
        TextTable table = new(title, "clips", "right", "wrong value", "wrong other", "not heard", "outside grammar", "let in", "stray yes");
        foreach (var group in rows.GroupBy(by).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            Add(table, group.Key, [.. group]);
        }

        Add(table, "all", rows);
        table.Write(output);
    }

    /// <summary>Wrong, not heard and outside are shares of the sentences with a meaning, let in of those without, a stray yes of all but the yeses.</summary>
    private static void Add(TextTable table, string name, IReadOnlyList<HeardRow> rows)
    {
        int meant = rows.Count(r => r.Expected is not null);
        int yeses = rows.Count(r => Recordings.UtteranceKind.IsYes(r.Expected));
        string Share(Verdict verdict) => ShareText.Of(rows.Count(r => r.Verdict == verdict), verdict == Verdict.LetIn ? rows.Count - meant : meant);
        table.Add(name, $"{rows.Count}", $"{rows.Count(r => r.Verdict is Verdict.Right or Verdict.Refused)}", Share(Verdict.WrongValue), Share(Verdict.WrongOther),
            Share(Verdict.NotHeard), Share(Verdict.OutsideGrammar), Share(Verdict.LetIn), ShareText.Of(rows.Count(r => r.StrayYes), rows.Count - yeses));
    }

    private static void Reliability(IReadOnlyList<HeardRow> rows, TextWriter output)
    {
        IReadOnlyList<Prediction> all = Predictions(rows);
        IReadOnlyList<Prediction> heard = Predictions(rows.Where(r => r.Outcome == "Heard"));
        TextTable table = new("posterior", "values", "mean posterior", "share right", "95 % interval");
        foreach (ReliabilityBin bin in Calibration.Bins(all, Bins))
        {
            var (low, high) = Wilson.Interval(bin.Right, bin.Count);
            table.Add(Invariant($"{bin.Low:0.0} to {bin.High:0.0}"), $"{bin.Count}", Invariant($"{bin.MeanProbability:0.000}"), Invariant($"{bin.ShareRight:0.000}"), Invariant($"{low:0.000} to {high:0.000}"));
        }

        table.Write(output);
        output.WriteLine(Invariant($"best value of {all.Count} recordings: expected calibration error {Calibration.ExpectedError(all, Bins):0.0000}, Brier score {Calibration.Brier(all):0.0000}"));
        output.WriteLine(Invariant($"of the {heard.Count} heard: expected calibration error {Calibration.ExpectedError(heard, Bins):0.0000}, Brier score {Calibration.Brier(heard):0.0000}"));
    }

    private static void SpeakersCalibration(IReadOnlyList<HeardRow> rows, TextWriter output)
    {
        TextTable table = new("speaker", "values", "mean posterior", "share right", "calibration error", "Brier score");
        foreach (var group in rows.Where(r => r.Best is not null).GroupBy(r => r.Speaker).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            IReadOnlyList<Prediction> own = Predictions(group);
            table.Add(group.Key, $"{own.Count}", Invariant($"{own.Average(p => p.Probability):0.000}"), Invariant($"{own.Average(p => p.Right ? 1.0 : 0):0.000}"),
                Invariant($"{Calibration.ExpectedError(own, Bins):0.000}"), Invariant($"{Calibration.Brier(own):0.000}"));
        }

        table.Write(output);
    }

    private static void WrongOnes(IReadOnlyList<HeardRow> rows, TextWriter output)
    {
        HeardRow[] wrong = [.. rows.Where(r => r.IsWrong)];
        output.WriteLine(Invariant($"wrong or let in with a posterior above {Sure}: {ShareText.Of(wrong.Count(r => r.Best!.Probability > Sure), rows.Count)} of {rows.Count}"));
        HeardRow[] doubtful = [.. rows.Where(r => r.Outcome == "Doubtful")];
        output.WriteLine(Invariant($"doubtful, so that the digits or the answer are asked for: {doubtful.Count(r => r.Expected is not null)} of the not heard, {doubtful.Count(r => r.Expected is null)} of those that are no reading"));
        double[] margins = [.. wrong.Where(r => r.Margin is not null).Select(r => r.Margin!.Value)];
        if (margins.Length > 0)
        {
            output.WriteLine(Invariant($"margin of {margins.Length} wrong or let in (log posterior; {wrong.Length - margins.Length} more have no runner-up): least {Quantile.Of(margins, 0):0.0}, median {Quantile.Of(margins, 0.5):0.0}, most {Quantile.Of(margins, 1):0.0}"));
        }
    }

    private static void Times(HearingResult result, TextWriter output)
    {
        output.WriteLine(Invariant($"real time factor {RealTimeFactor(result.Rows):0.000}; decoding after the end of speech: median {DecodeTime(result.Rows, 0.5):0} ms, 95th percentile {DecodeTime(result.Rows, 0.95):0} ms; peak memory {result.PeakMemoryMebibytes:0} MiB"));
        output.WriteLine(Settings(result));
    }

    private static IEnumerable<HeardRow> Decoded(IEnumerable<HeardRow> rows) => rows.Where(r => r.SpeechSeconds > 0);
}
