using System.Diagnostics;
using System.Globalization;

namespace HandsFree.Store.Tests.Journaling;

/// <summary>A child process that appends (see <see cref="Writer"/>), and what it has announced.</summary>
internal sealed class WriterProcess : IDisposable
{
    private readonly Process _process;

    public WriterProcess(string journal)
    {
        ProcessStartInfo start = new(Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet")
        {
            ArgumentList = { "exec", typeof(Writer).Assembly.Location },
            RedirectStandardOutput = true,
        };
        start.Environment[Writer.Variable] = journal;
        _process = Process.Start(start)!;
    }

    /// <summary>The next number that the child announced; null once it is dead and everything was read.</summary>
    public async Task<long?> NextAsync() =>
        await _process.StandardOutput.ReadLineAsync() is { } line && long.TryParse(line, CultureInfo.InvariantCulture, out long number)
            ? number
            : null;

    /// <summary>Ends the child at once (SIGKILL) and gives the last number that it announced whole.</summary>
    public async Task<long> KillAsync(long lastSeen)
    {
        _process.Kill();
        while (await NextAsync() is { } number)
        {
            lastSeen = number;
        }

        await _process.WaitForExitAsync();
        return lastSeen;
    }

    public void Dispose()
    {
        if (!_process.HasExited)
        {
            _process.Kill();
        }

        _process.Dispose();
    }
}
