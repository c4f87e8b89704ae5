using System.Diagnostics;
using HandsFree.Benchmarks.Hearing;

namespace HandsFree.Benchmarks.AllEngines;

/// <summary>Hears in a process of its own, so that the peak memory is that of one engine.</summary>
internal static class EngineProcess
{
    /// <summary>Runs "hearing" with one engine.</summary>
    /// <returns>Null, or why there is no result.</returns>
    public static string? Hear(HearingPlan plan, string engine, string json)
    {
        // Started as "dotnet HandsFree.Benchmarks.dll", the process is dotnet and the program its first argument.
        string program = Environment.ProcessPath!;
        string[] host = Path.GetFileNameWithoutExtension(program) == "dotnet" ? [typeof(EngineProcess).Assembly.Location] : [];
        ProcessStartInfo start = new(program, [.. host, "hearing", .. plan.Arguments(), "--engine", engine, "--json", json])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using Process child = Process.Start(start)!;
        Task<string> output = child.StandardOutput.ReadToEndAsync();
        string error = child.StandardError.ReadToEnd();
        child.WaitForExit();
        output.Wait();
        return child.ExitCode == 0 ? null : error.Trim() is { Length: > 0 } why ? why : $"it ended with exit code {child.ExitCode}";
    }
}
