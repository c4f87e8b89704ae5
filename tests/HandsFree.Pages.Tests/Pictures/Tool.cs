using System.Diagnostics;
using Xunit;

namespace HandsFree.Pages.Tests.Pictures;

/// <summary>Programs from outside that read what was written: poppler's and Chromium. A test that needs one that is not here is skipped.</summary>
internal static class Tool
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(3);

    /// <summary>Runs a program and gives its output.</summary>
    public static string Run(string program, params string[] arguments)
    {
        string? path = Find(program);
        Assert.SkipWhen(path is null, $"{program} is not on this machine; scripts/setup.sh --tests installs it");
        ProcessStartInfo start = new(path!, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["FONTCONFIG_FILE"] = Fonts.Configuration;
        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync();
        Task<string> error = process.StandardError.ReadToEndAsync();
        if (!process.WaitForExit(Patience))
        {
            process.Kill(entireProcessTree: true);
            Assert.Fail($"{program} did not end");
        }

        Assert.True(process.ExitCode == 0, $"{program} ended with {process.ExitCode}: {error.Result}");
        return output.Result;
    }

    private static string? Find(string program) => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .Select(folder => Path.Combine(folder, program)).FirstOrDefault(File.Exists);
}
