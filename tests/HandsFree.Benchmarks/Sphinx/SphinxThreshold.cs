using System.Globalization;
using HandsFree.Audio.Wav;
using HandsFree.Language.Meaning;
using HandsFree.Language.Sentences;
using HandsFree.Speech;
using HandsFree.Speech.Posterior;
using HandsFree.Speech.Sphinx;

namespace HandsFree.Benchmarks.Sphinx;

/// <summary>Chooses the numbers of sphinx-parameters.json on every second speaker and reports on the others.</summary>
internal static class SphinxThreshold
{
    /// <summary>What a wrong or let-in hearing costs where one that must be said again costs 1.</summary>
    private const double CostOfWrong = 5;

    internal static int Run(string audio, string grammars, TextWriter output)
    {
        using var engine = new SphinxRecognizer(new());
        Trial[] trials = [.. TrialClips.Read(audio, grammars).Select(clip => Try(engine, clip))];
        Trial[] tuning = [.. trials.Where(t => t.Clip.Tuning)];
        double threshold = Choose(tuning);
        double slope = Least(Steps(0.02, 2, 100), s => Surprise(tuning, threshold, s));
        double scale = Least(Steps(0.0005, 0.1, 100), s => Surprise(tuning, s));
        output.WriteLine(FormattableString.Invariant($"threshold {threshold:0.0}  slope {slope:0.000}  scoreScale {scale:0.0000}"));
        foreach (var part in trials.GroupBy(t => (t.Clip.Tuning, t.Clip.Group)))
        {
            output.WriteLine(Line(part.Key.Tuning ? "chosen on" : "held out", part.Key.Group, [.. part], threshold));
        }

        foreach (double other in (double[])[6, 10, 12, 14, 16, 18, 20, 22, 24, 28])
        {
            output.WriteLine(Line("chosen on", FormattableString.Invariant($"all, threshold {other}"), tuning, other));
        }

        foreach (Trial trial in trials)
        {
            output.WriteLine(Detail(trial, threshold));
        }

        return 0;
    }

    private static Trial Try(SphinxRecognizer engine, TrialClip clip)
    {
        float[] samples = WavReader.Read(clip.Path).Clip?.Samples ?? throw new InvalidDataException(clip.Path);
        SemanticValue? truth = Matcher.Match(clip.Grammar, clip.Words).FirstOrDefault();
        SphinxEvidence? evidence = engine.Gather(samples, clip.Grammar);
        IReadOnlyList<Candidate> shares = evidence is null ? [] : SentencePosterior.Share(evidence.Weighted(SphinxParameters.Measured.ScoreScale, SphinxParameters.Measured.WordCost), clip.Grammar, 1);
        return new(clip, truth, evidence, shares);
    }

    /// <summary>The threshold of least cost, in the middle of the stretch where the cost stays least.</summary>
    private static double Choose(Trial[] trials)
    {
        double[] thresholds = [.. Steps(-20, 60, 800)];
        double[] costs = [.. thresholds.Select(t => trials.Sum(trial => trial.Wrong(t) || trial.LetIn(t) ? CostOfWrong : trial.None(t) ? 1 : 0))];
        int first = Array.IndexOf(costs, costs.Min());
        int last = first;
        while (last + 1 < costs.Length && costs[last + 1] == costs[first])
        {
            last++;
        }

        return (thresholds[first] + thresholds[last]) / 2;
    }

    /// <summary>Negative log likelihood of "it is right" under a slope.</summary>
    private static double Surprise(Trial[] trials, double threshold, double slope) => trials
        .Where(t => t.Shares.Count > 0)
        .Sum(t => -Math.Log(1 / (1 + Math.Exp((t.IsRight ? 1 : -1) * slope * (t.Evidence!.Lead - threshold)))));

    /// <summary>Negative log likelihood of the true value among those found, under a scale of the scores.</summary>
    private static double Surprise(Trial[] trials, double scale) => trials
        .Where(t => t.Truth is not null && t.Shares.Any(c => c.Meaning.Equals(t.Truth)))
        .Sum(t => -Math.Log(SentencePosterior.Share(t.Evidence!.Weighted(scale, SphinxParameters.Measured.WordCost), t.Clip.Grammar, 1).First(c => c.Meaning.Equals(t.Truth)).Probability));

    private static IEnumerable<double> Steps(double from, double to, int count) =>
        Enumerable.Range(0, count + 1).Select(i => from + ((to - from) * i / count));

    private static double Least(IEnumerable<double> values, Func<double, double> cost) => values.MinBy(cost);

    private static string Line(string half, string group, Trial[] trials, double threshold) => string.Create(
        CultureInfo.InvariantCulture,
        $"{half}\t{group}\tsentences {trials.Count(t => t.Truth is not null)}\twrong {trials.Count(t => t.Wrong(threshold))}\tnone {trials.Count(t => t.None(threshold))}\tother speech {trials.Count(t => t.Truth is null)}\tlet in {trials.Count(t => t.LetIn(threshold))}");

    private static string Detail(Trial t, double threshold)
    {
        string verdict = t.Wrong(threshold) ? "WRONG" : t.LetIn(threshold) ? "LET IN" : t.None(threshold) ? "none" : "ok";
        string scores = string.Join(" | ", t.Evidence?.List.Take(3).Select(h => $"{h.Words} {h.Score}") ?? []);
        return string.Create(CultureInfo.InvariantCulture, $"{verdict}\t{Path.GetFileName(t.Clip.Path)}\t{t.Clip.Words}\t{t.Evidence?.Lead:0.00}\t{t.Evidence?.Words}\t{scores}");
    }
}
