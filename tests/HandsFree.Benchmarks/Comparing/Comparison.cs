using System.Globalization;
using HandsFree.Benchmarks.Results;
using HandsFree.Benchmarks.Statistics;
using static System.FormattableString;

namespace HandsFree.Benchmarks.Comparing;

/// <summary>Prints two runs side by side.</summary>
internal static class Comparison
{
    /// <summary>Recordings that both runs have are compared one by one; only where they have none in common, share against share.</summary>
    public static void Write(HearingResult a, HearingResult b, TextWriter output)
    {
        output.WriteLine($"A: {HearingReport.Settings(a)}");
        output.WriteLine($"B: {HearingReport.Settings(b)}");
        Dictionary<string, HeardRow> inB = b.Rows.ToDictionary(r => r.Key);
        (HeardRow A, HeardRow B)[] both = [.. a.Rows.Where(r => inB.ContainsKey(r.Key)).Select(r => (r, inB[r.Key]))];
        output.WriteLine($"{both.Length} recordings in both; {a.Rows.Count - both.Length} only in A, {b.Rows.Count - both.Length} only in B{(both.Length == 0 ? "" : " (left out)")}");
        output.WriteLine();
        if (both.Length == 0)
        {
            Unpaired(a.Rows, b.Rows, output);
            Numbers(a, a.Rows, b, b.Rows, output);
        }
        else
        {
            Paired(both, output);
            Numbers(a, [.. both.Select(p => p.A)], b, [.. both.Select(p => p.B)], output);
            Changes(both, output);
        }
    }

    private static void Paired((HeardRow A, HeardRow B)[] both, TextWriter output)
    {
        TextTable table = new("", "A", "B", "only in A", "only in B", "p");
        foreach (Measure measure in Measure.All)
        {
            int onlyA = both.Count(p => measure.Holds(p.A) && !measure.Holds(p.B));
            int onlyB = both.Count(p => !measure.Holds(p.A) && measure.Holds(p.B));
            table.Add(measure.Name, ShareText.Of(both.Count(p => measure.Holds(p.A)), both.Length), ShareText.Of(both.Count(p => measure.Holds(p.B)), both.Length),
                $"{onlyA}", $"{onlyB}", Chance(SignTest.Probability(onlyA, onlyB)));
        }

        table.Write(output);
        output.WriteLine("In brackets: 95 % (Wilson 1927). p: the chance of so uneven a change if nothing had changed (McNemar 1947, exact), not corrected for several rows.");
        output.WriteLine();
    }

    private static void Unpaired(IReadOnlyList<HeardRow> a, IReadOnlyList<HeardRow> b, TextWriter output)
    {
        TextTable table = new("", "A", "B", "B less A, percentage points");
        foreach (Measure measure in Measure.All)
        {
            int inA = a.Count(measure.Holds);
            int inB = b.Count(measure.Holds);
            var (low, high) = DifferenceOfShares.Interval(inB, b.Count, inA, a.Count);
            table.Add(measure.Name, ShareText.Of(inA, a.Count), ShareText.Of(inB, b.Count), Invariant($"{100 * low:0.0} to {100 * high:0.0}"));
        }

        table.Write(output);
        output.WriteLine("In brackets: 95 % (Wilson 1927). The difference: 95 % (Newcombe 1998, method 10); an interval without 0 is more than noise.");
        output.WriteLine();
    }

    private static void Numbers(HearingResult a, IReadOnlyList<HeardRow> rowsA, HearingResult b, IReadOnlyList<HeardRow> rowsB, TextWriter output)
    {
        TextTable table = new("", "A", "B");
        void Add(string name, string format, Func<IReadOnlyList<HeardRow>, double> number) =>
            table.Add(name, number(rowsA).ToString(format, CultureInfo.InvariantCulture), number(rowsB).ToString(format, CultureInfo.InvariantCulture));
        Add("expected calibration error", "0.0000", rows => Calibration.ExpectedError(HearingReport.Predictions(rows), HearingReport.Bins));
        Add("Brier score", "0.0000", rows => Calibration.Brier(HearingReport.Predictions(rows)));
        Add("decoding, median, ms", "0", rows => HearingReport.DecodeTime(rows, 0.5));
        Add("decoding, 95th percentile, ms", "0", rows => HearingReport.DecodeTime(rows, 0.95));
        Add("real time factor", "0.000", HearingReport.RealTimeFactor);
        table.Add("peak memory, MiB (of the whole run)", Invariant($"{a.PeakMemoryMebibytes:0}"), Invariant($"{b.PeakMemoryMebibytes:0}"));
        table.Write(output);
        output.WriteLine();
    }

    private static void Changes((HeardRow A, HeardRow B)[] both, TextWriter output)
    {
        var changed = both.Where(p => p.A.Verdict != p.B.Verdict || p.A.IsWrong && !p.A.Best!.SameAs(p.B.Best)).ToArray();
        output.WriteLine(changed.Length == 0 ? "No recording is heard otherwise." : $"{changed.Length} recordings are heard otherwise:");
        foreach (var (inA, inB) in changed.OrderBy(p => Measure.Harm(p.A.Verdict) - Measure.Harm(p.B.Verdict)))
        {
            int change = Measure.Harm(inB.Verdict) - Measure.Harm(inA.Verdict);
            output.WriteLine($"{(change > 0 ? "worse" : change < 0 ? "better" : "other")}\t{inA.Key}\t{inA.Words}\t{Heard(inA)} -> {Heard(inB)}");
        }
    }

    private static string Chance(double p) => p < 0.001 ? "< 0.001" : Invariant($"{p:0.000}");

    private static string Heard(HeardRow row) => Invariant($"{row.Verdict} {row.Best?.Meaning?.ToJsonString()} {row.Best?.Probability:0.000}").TrimEnd();
}
