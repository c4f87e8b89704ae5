using System.CommandLine;
using HandsFree.App.Hearing;
using HandsFree.Benchmarks.Comparing;
using HandsFree.Benchmarks.Hearing;
using HandsFree.Benchmarks.Results;
using HandsFree.Benchmarks.Statistics;
using static System.FormattableString;

namespace HandsFree.Benchmarks.AllEngines;

/// <summary>"engines FOLDER ...": every engine that is here over the same recordings, in one table.</summary>
internal static class EnginesCommand
{
    public static Command Make()
    {
        HearingOptions options = new();
        Option<string?> json = new("--json") { Description = "A folder for the result of each engine, ENGINE.json" };
        Command command = new("engines", "All engines that are here on the same recordings, in one table; says which are missing and why") { json };
        options.AddTo(command);
        command.SetAction(parsed => Failures.Told(Console.Error, () => Run(options.Read(parsed), parsed.GetValue(json))));
        return command;
    }

    private static int Run(HearingPlan plan, string? folder)
    {
        plan.Read();
        string place = Directory.CreateDirectory(folder ?? Path.Combine(Path.GetTempPath(), $"handsfree-engines-{Environment.ProcessId}")).FullName;
        try
        {
            List<HearingResult> results = [];
            foreach (string engine in EngineNames.All)
            {
                Console.WriteLine($"{engine} ...");
                string file = Path.Combine(place, engine + ".json");
                if (EngineProcess.Hear(plan, engine, file) is { } whyNot)
                {
                    Console.WriteLine($"{engine}: {whyNot}");
                }
                else
                {
                    results.Add(HearingResult.Load(file));
                }
            }

            Console.WriteLine();
            Write(results, Console.Out);
            return results.Count > 0 ? 0 : throw new InvalidDataException("no engine could hear");
        }
        finally
        {
            if (folder is null)
            {
                Directory.Delete(place, recursive: true);
            }
        }
    }

    private static void Write(IReadOnlyList<HearingResult> results, TextWriter output)
    {
        TextTable table = new(["", .. results.Select(r => r.Engine)]);
        void Add(string name, Func<HearingResult, string> text) => table.Add([name, .. results.Select(text)]);
        Add("recordings", r => $"{r.Rows.Count}");
        foreach (Measure measure in Measure.All)
        {
            Add(measure.Name, r => ShareText.Of(r.Rows.Count(measure.Holds), r.Rows.Count));
        }

        Add("expected calibration error", r => Invariant($"{Calibration.ExpectedError(HearingReport.Predictions(r.Rows), HearingReport.Bins):0.000}"));
        Add("Brier score", r => Invariant($"{Calibration.Brier(HearingReport.Predictions(r.Rows)):0.000}"));
        Add("decoding, median and 95th percentile, ms", r => Invariant($"{HearingReport.DecodeTime(r.Rows, 0.5):0} and {HearingReport.DecodeTime(r.Rows, 0.95):0}"));
        Add("real time factor", r => Invariant($"{HearingReport.RealTimeFactor(r.Rows):0.000}"));
        Add("peak memory, MiB", r => Invariant($"{r.PeakMemoryMebibytes:0}"));
        table.Write(output);
        output.WriteLine("In brackets: 95 % (Wilson 1927), of all recordings.");
        foreach (HearingResult result in results)
        {
            output.WriteLine(HearingReport.Settings(result));
        }
    }
}
