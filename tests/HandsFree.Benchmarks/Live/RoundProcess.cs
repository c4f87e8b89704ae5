using System.Diagnostics;
using System.Text.Json;
using HandsFree.App.Demo;
using HandsFree.App.Demo.Room;
using HandsFree.App.Session;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Quantities;
using HandsFree.TestKit.Sound;

namespace HandsFree.Benchmarks.Live;

/// <summary>"handsfree round" in a process of its own, listening to the server's microphone, and what its lines of JSON tell.</summary>
internal sealed class RoundProcess : IDisposable
{
    private readonly Process process;
    private readonly Lock gate = new();
    private readonly List<string> lines = [];
    private readonly List<string> errors = [];
    private readonly TimeProvider time;
    private DateTimeOffset quietSince;
    private bool speaking;

    private RoundProcess(Process process, TimeProvider time)
    {
        (this.process, this.time) = (process, time);
        process.OutputDataReceived += (_, e) => Take(e.Data);
        process.ErrorDataReceived += (_, e) => TakeError(e.Data);
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
    }

    /// <summary>What the aide hears of it.</summary>
    public AideEars Ears { get; } = new();

    /// <summary>Every line it wrote, with the remarks of stderr.</summary>
    public IReadOnlyList<string> Lines
    {
        get
        {
            lock (gate)
            {
                return [.. errors, .. lines];
            }
        }
    }

    /// <summary>Whether it runs.</summary>
    public bool Runs => !process.HasExited;

    /// <summary>Its memory now, bytes.</summary>
    public long Memory
    {
        get
        {
            process.Refresh();
            return process.WorkingSet64;
        }
    }

    /// <summary>How long the program has been silent; null while it speaks.</summary>
    public TimeSpan? Quiet
    {
        get
        {
            lock (gate)
            {
                return speaking ? null : time.GetUtcNow() - quietSince;
            }
        }
    }

    /// <summary>Starts a round in a home that has a person with a PIN.</summary>
    /// <param name="server">Where it listens and speaks.</param>
    /// <param name="home">The home's folder.</param>
    /// <param name="state">The device's state folder.</param>
    /// <param name="engine">The engine that hears.</param>
    /// <param name="time">The clock.</param>
    public static RoundProcess Start(PulseServer server, string home, string state, string engine, TimeProvider time)
    {
        ProcessStartInfo start = new(Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet")
        {
            ArgumentList =
            {
                "exec", typeof(App.Commands.CommandLine).Assembly.Location, "round", "--json", "--open-microphone", "--sound", "pulse",
                "--microphone", PulseServer.Microphone, "--loudspeaker", PulseServer.Earpiece, "--engine", engine, "--home", home,
            },
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["PULSE_SERVER"] = server.Address;
        start.Environment["HANDSFREE_STATE"] = state;
        start.Environment["HANDSFREE_PIN_FILE"] = Path.Combine(home, DemoPerson.FileName);
        return new RoundProcess(Process.Start(start) ?? throw new InvalidOperationException("the round did not start"), time);
    }

    /// <summary>Waits until it has said something that ends so.</summary>
    /// <returns>False where it does not in time.</returns>
    public bool WaitForWords(string end, TimeSpan atMost)
    {
        using ManualResetEventSlim never = new();
        long began = time.GetTimestamp();
        while (!Lines.Any(line => line.Contains($"{end}\",", StringComparison.Ordinal)))
        {
            if (time.GetElapsedTime(began) > atMost || !Runs)
            {
                return false;
            }

            never.Wait(TimeSpan.FromMilliseconds(50));
        }

        return true;
    }

    /// <summary>Waits for its end.</summary>
    /// <returns>Its exit code; null where it does not end in time.</returns>
    public int? WaitForEnd(TimeSpan atMost)
    {
        if (!process.WaitForExit(atMost))
        {
            return null;
        }

        process.WaitForExit(); // its last lines
        return process.ExitCode;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (!process.HasExited)
        {
            process.Kill();
            process.WaitForExit();
        }

        process.Dispose();
    }

    private void TakeError(string? line)
    {
        lock (gate)
        {
            errors.AddRange(line is null ? [] : [line]);
        }
    }

    private void Take(string? line)
    {
        if (line is null)
        {
            return;
        }

        using JsonDocument document = JsonDocument.Parse(line);
        JsonElement told = document.RootElement;
        DateTimeOffset at = told.GetProperty("at").GetDateTimeOffset();
        lock (gate)
        {
            lines.Add(line);
            if (told.TryGetProperty("said", out JsonElement said))
            {
                speaking = true;
                Ears.Saw(new SessionNote.Said(at, said.GetString()!, null));
            }
            else if (told.TryGetProperty("tone", out JsonElement tone))
            {
                speaking = true;
                Ears.Saw(new SessionNote.Sounded(at, Enum.Parse<Tone>(tone.GetString()!)));
            }
            else if (told.TryGetProperty("listens", out JsonElement kind))
            {
                Ears.Saw(new SessionNote.Listens(at, new Listening(
                    Enum.Parse<ListeningKind>(kind.GetString()!),
                    told.GetProperty("awaited").GetString() is { } sign ? Enum.Parse<VitalSign>(sign) : null,
                    told.GetProperty("answerAwaited").GetBoolean())));
            }
            else if (told.TryGetProperty("quiet", out _))
            {
                (speaking, quietSince) = (false, time.GetUtcNow());
            }
        }
    }
}
