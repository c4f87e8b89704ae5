using System.Diagnostics;
using HandsFree.Scenarios.CommandLine;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Demo;

/// <summary>A whole short demo with the default engine under strace: no socket of the internet is opened. scripts/no-network.sh does the same
/// with the long one, which lasts long enough for what a library does on its own after a while; .ci/run runs it.</summary>
public sealed class NoNetworkTests
{
    [Fact]
    public async Task A_demo_opens_no_socket_of_the_internet()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() && await Traces(), "strace is not here, or tracing is not permitted");
        using TemporaryHome home = new();
        using ShortShift shift = new();
        string log = home.At("sockets");

        (int code, string output) = await Run(
            "strace",
            start =>
            {
                start.Environment["HANDSFREE_ROOT"] = shift.Root;
                start.Environment["HANDSFREE_STATE"] = home.States;
                start.Environment.Remove("ORT_DISABLE_TELEMETRY"); // the program itself must keep silent, without the launcher
            },
            "-f", "-qq", "-e", "trace=socket,execve", "-o", log,
            Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet", "exec", BuiltProgram.Path,
            "demo", "--fast", "--home", home.At("made-up"));

        code.ShouldBeLessThan(2, output); // whether all was heard right is another test's question
        string[] calls = await File.ReadAllLinesAsync(log, TestContext.Current.CancellationToken);
        calls.ShouldContain(call => call.Contains("execve(", StringComparison.Ordinal), "nothing was traced");
        calls.Where(call => call.Contains("socket(AF_INET", StringComparison.Ordinal)).ShouldBeEmpty();
    }

    private static async Task<bool> Traces()
    {
        try
        {
            return (await Run("strace", _ => { }, "-o", "/dev/null", "true")).Code == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }

    private static async Task<(int Code, string Output)> Run(string program, Action<ProcessStartInfo> change, params string[] arguments)
    {
        ProcessStartInfo start = new(program) { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (string argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        change(start);
        using Process process = Process.Start(start)!;
        Task<string> error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        string output = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (process.ExitCode, output + await error);
    }
}
