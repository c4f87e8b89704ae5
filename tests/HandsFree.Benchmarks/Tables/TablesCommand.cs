using System.CommandLine;
using System.Text.Json;
using System.Text.Json.Nodes;
using HandsFree.Benchmarks.Results;
using HandsFree.Benchmarks.Statistics;
using static System.FormattableString;

namespace HandsFree.Benchmarks.Tables;

/// <summary>"tables FOLDER": the results in a folder, those of "hearing" and of "dictations", as Markdown.</summary>
internal static class TablesCommand
{
    public static Command Make()
    {
        Argument<string> folder = new("FOLDER") { Description = "With the files of hearing --json and dictations --json" };
        Command command = new("tables", "The results of a folder as Markdown tables") { folder };
        command.SetAction(parsed => Failures.Told(Console.Error, () =>
        {
            Write(parsed.GetValue(folder)!, Console.Out);
            return 0;
        }));
        return command;
    }

    /// <summary>Writes the tables of a folder.</summary>
    /// <exception cref="InvalidDataException">No such folder, or a file in it is no result.</exception>
    public static void Write(string folder, TextWriter output)
    {
        string[] files = Directory.Exists(folder) ? [.. Directory.EnumerateFiles(folder, "*.json").Order(StringComparer.Ordinal)]
            : throw new InvalidDataException($"{folder}: there is no such folder");
        Hearings([.. files.Where(f => !IsDictations(f)).Select(f => (Path.GetFileNameWithoutExtension(f), HearingResult.Load(f)))], output);
        Dictations([.. files.Where(IsDictations)], output);
    }

    private static bool IsDictations(string file) => Path.GetFileName(file).StartsWith("dictations", StringComparison.Ordinal);

    /// <summary>Shares of the sentences that have a meaning; let in of those that have none.</summary>
    private static void Hearings(IReadOnlyList<(string Name, HearingResult Result)> all, TextWriter output)
    {
        Row(output, "run", "engine", "recordings", "wrong", "not heard", "of them doubtful", "outside the grammar", "let in", "stray yes", "wrong above 0.95",
            "calibration error: all, heard", "real time factor", "decoding median, 95th, ms", "peak MiB");
        Row(output, [.. Enumerable.Repeat("---", 14)]);
        foreach (var (name, result) in all)
        {
            IReadOnlyList<HeardRow> rows = result.Rows;
            int meant = rows.Count(r => r.Expected is not null);
            int wrong = rows.Count(r => r.Verdict is Verdict.WrongValue or Verdict.WrongOther);
            Row(output, name, result.Engine, $"{rows.Count}", ShareText.Of(wrong, meant), ShareText.Of(rows.Count(r => r.Verdict == Verdict.NotHeard), meant),
                $"{rows.Count(r => r.Outcome == "Doubtful" && r.Expected is not null)}", $"{rows.Count(r => r.Verdict == Verdict.OutsideGrammar)}",
                ShareText.Of(rows.Count(r => r.Verdict == Verdict.LetIn), rows.Count - meant), $"{rows.Count(r => r.StrayYes)}",
                $"{rows.Count(r => r.IsWrong && r.Best!.Probability > HearingReport.Sure)}",
                Invariant($"{Error(rows):0.000}, {Error(rows.Where(r => r.Outcome == "Heard")):0.000}"), Invariant($"{HearingReport.RealTimeFactor(rows):0.00}"),
                Invariant($"{HearingReport.DecodeTime(rows, 0.5):0}, {HearingReport.DecodeTime(rows, 0.95):0}"), Invariant($"{result.PeakMemoryMebibytes:0}"));
        }

        output.WriteLine();
    }

    private static double Error(IEnumerable<HeardRow> rows) => Calibration.ExpectedError(HearingReport.Predictions(rows), HearingReport.Bins);

    private static void Dictations(IReadOnlyList<string> files, TextWriter output)
    {
        Row(output, "run", "missed", "wrong saved", "saved although not said", "read back wrong", "first try (nobody in the way)", "not saved", "prompts a value", "set of five, s",
            "visits", "typed at the door", "no end", "ended early");
        Row(output, [.. Enumerable.Repeat("---", 13)]);
        foreach (string file in files)
        {
            JsonNode result = JsonNode.Parse(File.ReadAllText(file)) ?? throw new InvalidDataException($"{file} is empty");
            JsonArray findings = result["findings"]!.AsArray();
            foreach (JsonNode? summary in result["summaries"]!.AsArray())
            {
                double missed = summary!["MissRate"]!.GetValue<double>();
                int Found(string kind) => findings.Count(f => f!["Kind"]!.GetValue<string>() == kind && f["MissRate"]!.GetValue<double>() == missed);
                Row(output, Path.GetFileNameWithoutExtension(file), Invariant($"{missed}"), Share(summary["WrongSaved"]), Share(summary["SavedUnsaid"]), Share(summary["ReadBackWrong"]),
                    Share(summary["FirstTry"]), Share(summary["NotSaved"]), Invariant($"{summary["PromptsPerValue"]!.GetValue<double>():0.00}"),
                    Invariant($"{summary["SetSeconds"]!.GetValue<double>():0} ({summary["Sets"]} sets)"), $"{result["options"]!["VisitCount"]}", $"{Found("typed at the door")}", $"{Found("no end")}", $"{Found("ended early")}");
            }
        }
    }

    private static string Share(JsonNode? share) => share.Deserialize<Dictations.Counting.Share>() is { } s
        ? Invariant($"{s.Some} of {s.Of} ({100 * s.Low:0.0} to {100 * s.High:0.0} %)")
        : throw new InvalidDataException("a share is missing; run dictations again");

    private static void Row(TextWriter output, params string[] cells) => output.WriteLine($"| {string.Join(" | ", cells)} |");
}
