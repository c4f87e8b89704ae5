using System.Diagnostics;
using System.Text.Json;
using HandsFree.Benchmarks.Dictations.Counting;

namespace HandsFree.Benchmarks.Dictations;

/// <summary>Several processes play, each its part of the visits; their results are joined.</summary>
internal static class Parts
{
    /// <summary>Runs this program once for each part.</summary>
    /// <param name="processes">How many.</param>
    /// <param name="json">Each writes beside this file.</param>
    /// <returns>All visits, or null where a part failed; it has said why.</returns>
    public static IReadOnlyList<PlayedVisit>? Run(int processes, string json)
    {
        string[] own = Environment.GetCommandLineArgs();
        string[] command = Path.GetFileNameWithoutExtension(Environment.ProcessPath) == "dotnet" ? [.. own] : [.. own.Skip(1)];
        List<(Process Process, string File)> running = [];
        for (int part = 0; part < processes; part++)
        {
            string file = FormattableString.Invariant($"{json}.part{part}");
            Process process = Process.Start(new ProcessStartInfo(Environment.ProcessPath!, [.. command, "--part", $"{part}", "--part-file", file]))
                ?? throw new IOException("a process did not start");
            running.Add((process, file));
        }

        List<PlayedVisit> all = [];
        bool failed = false;
        foreach (var (process, file) in running)
        {
            process.WaitForExit();
            failed |= process.ExitCode != 0;
            process.Dispose();
            if (!failed)
            {
                all.AddRange(JsonSerializer.Deserialize<List<PlayedVisit>>(File.ReadAllText(file))!);
                File.Delete(file);
            }
        }

        return failed ? null : all;
    }
}
