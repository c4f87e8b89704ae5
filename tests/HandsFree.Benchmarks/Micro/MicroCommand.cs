using System.CommandLine;
using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Diagnosers;
using BenchmarkDotNet.Exporters;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Loggers;
using BenchmarkDotNet.Reports;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;

namespace HandsFree.Benchmarks.Micro;

/// <summary>"micro": time and garbage of what is ours, by BenchmarkDotNet in this process (its usual way builds a project for each benchmark,
/// which takes longer than the measuring).</summary>
internal static class MicroCommand
{
    private static readonly Type[] Benchmarks = [typeof(GrammarCompile), typeof(AutomatonStep), typeof(Posterior), typeof(JournalAppend), typeof(ViewProjection)];

    public static Command Make()
    {
        Option<string> job = new("--job") { Description = "dry (each once, to see that it runs), short (three rounds) or medium", DefaultValueFactory = _ => "short" };
        job.AcceptOnlyFromAmong("dry", "short", "medium");
        Option<string> only = new("--only") { Description = "Part of a benchmark's name", DefaultValueFactory = _ => "" };
        Option<string?> folder = new("--report") { Description = "A folder for BenchmarkDotNet's full reports; without it only the table is printed" };
        Command command = new("micro", "Time and garbage of grammar compile, automaton step, posterior, journal append, view projection") { job, only, folder };
        command.SetAction(parsed => Failures.Told(Console.Error, () => Run(parsed.GetValue(job)!, parsed.GetValue(only)!, parsed.GetValue(folder))));
        return command;
    }

    private static int Run(string job, string only, string? folder)
    {
        Type[] wanted = [.. Benchmarks.Where(type => type.Name.Contains(only, StringComparison.OrdinalIgnoreCase))];
        if (wanted.Length == 0)
        {
            throw new InvalidDataException($"--only {only}: no benchmark has that in its name; there are {string.Join(", ", Benchmarks.Select(b => b.Name))}");
        }

        DirectoryInfo place = folder is null ? Directory.CreateTempSubdirectory("handsfree-micro-") : Directory.CreateDirectory(folder);
        try
        {
            AccumulationLogger log = new();
            Summary[] summaries = BenchmarkRunner.Run(wanted, Configuration(job, place.FullName, keep: folder is not null).AddLogger(log));
            if (summaries.Length == 0 || summaries.Any(s => s.HasCriticalValidationErrors || s.Reports.IsEmpty || s.Reports.Any(r => !r.Success)))
            {
                throw new InvalidDataException($"{log.GetLog()}\na benchmark failed, see above");
            }

            foreach (Summary summary in summaries)
            {
                MarkdownExporter.Console.ExportToLog(summary, ConsoleLogger.Default);
            }

            return 0;
        }
        finally
        {
            if (folder is null)
            {
                place.Delete(recursive: true);
            }
        }
    }

    private static ManualConfig Configuration(string job, string place, bool keep)
    {
        Job how = job switch
        {
            "dry" => Job.Dry,
            "short" => Job.ShortRun,
            _ => Job.MediumRun,
        };
        ManualConfig config = ManualConfig.CreateEmpty()
            .AddJob(how.WithToolchain(InProcessEmitToolchain.Instance))
            .AddDiagnoser(MemoryDiagnoser.Default)
            .AddColumnProvider(DefaultColumnProviders.Descriptor, DefaultColumnProviders.Params, DefaultColumnProviders.Statistics, DefaultColumnProviders.Metrics)
            .WithArtifactsPath(place)
            .WithOptions(ConfigOptions.JoinSummary);
        return keep ? config.AddExporter([.. DefaultConfig.Instance.GetExporters()]) : config;
    }
}
