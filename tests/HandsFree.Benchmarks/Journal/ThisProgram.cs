using System.Diagnostics;

namespace HandsFree.Benchmarks.Journals;

/// <summary>The benchmark program as a process of its own, also where its tests run.</summary>
internal static class ThisProgram
{
    /// <summary>Starts it.</summary>
    /// <param name="arguments">What it is to do.</param>
    /// <param name="under">A program that starts it, with its arguments; none where empty.</param>
    public static Process Start(IEnumerable<string> arguments, params string[] under)
    {
        string[] line = [.. under, Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet", "exec", typeof(ThisProgram).Assembly.Location, .. arguments];
        ProcessStartInfo start = new(line[0]) { RedirectStandardOutput = true };
        foreach (string argument in line[1..])
        {
            start.ArgumentList.Add(argument);
        }

        start.Environment["DOTNET_TieredPGO"] = "0";
        start.Environment["DOTNET_EnableWriteXorExecute"] = "0"; // its memory file would meet a limit of file sizes
        return Process.Start(start)!;
    }
}
