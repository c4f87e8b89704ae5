using System.Diagnostics;
using System.Globalization;
using Xunit;

namespace HandsFree.TestKit.Sound;

/// <summary>A PulseAudio server of our own in a temporary folder, with a null sink whose monitor is the microphone and one that is the
/// earpiece. It touches no sound card and no other server.</summary>
public sealed class PulseServer : IDisposable
{
    /// <summary>What is played there is heard at <see cref="Microphone"/>.</summary>
    public const string Mouth = "mouth";

    /// <summary>The monitor of <see cref="Mouth"/>.</summary>
    public const string Microphone = "mouth.monitor";

    /// <summary>Where the program plays.</summary>
    public const string Earpiece = "earpiece";

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(15);

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("handsfree-pulse-");
    private readonly Dictionary<string, string> modules = [];
    private Process process;

    private PulseServer() => process = StartProcess();

    /// <summary>As PULSE_SERVER names it.</summary>
    public string Address => $"unix:{Socket}";

    private string Socket => Path.Combine(folder.FullName, "socket");

    /// <summary>Null where a server can be started here, else the reason.</summary>
    public static string? WhyNot() =>
        !OperatingSystem.IsLinux() ? "PulseAudio is used on Linux only"
        : Missing("pulseaudio") ?? Missing("pactl");

    /// <summary>Starts one; the test is skipped with the reason where that can't be.</summary>
    public static PulseServer StartOrSkip()
    {
        Assert.SkipWhen(WhyNot() is not null, WhyNot() ?? "");
        try
        {
            return Start();
        }
        catch (InvalidOperationException cant)
        {
            Assert.Skip(cant.Message);
            throw;
        }
    }

    /// <summary>Starts one.</summary>
    /// <exception cref="InvalidOperationException">It can't run here; says why.</exception>
    public static PulseServer Start()
    {
        PulseServer server = new();
        server.WaitForIt();
        server.Load(Mouth);
        server.Load(Earpiece);
        return server;
    }

    /// <summary>Plugs a null sink in, and with it its monitor. Without rewinding (PulseAudio 14) it works in pieces of 50 ms at most; with
    /// it, it renders two seconds ahead while nothing plays.</summary>
    public void Load(string sink) =>
        modules[sink] = Control("load-module", "module-null-sink", $"sink_name={sink}", "rate=16000", "channels=1", "format=float32le", "norewinds=1").Trim();

    /// <summary>Unplugs it.</summary>
    public void Unload(string sink) => Control("unload-module", modules[sink]);

    /// <summary>Lets what one sink plays be heard in another, as loud as it is: a loudspeaker beside a microphone.</summary>
    public void Echo(string from, string to) => Control("load-module", "module-loopback", $"source={from}.monitor", $"sink={to}", "latency_msec=20");

    /// <summary>Moves every stream that records to another source, as a desktop's mixer would.</summary>
    public void MoveRecordings(string to)
    {
        foreach (string line in Control("list", "short", "source-outputs").Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            Control("move-source-output", line.Split('\t')[0], to);
        }
    }

    /// <summary>Stops the server's process, which answers nothing any more; <see cref="GoOn"/> lets it go on.</summary>
    public void Freeze() => Signal("STOP");

    /// <summary>Lets it go on.</summary>
    public void GoOn() => Signal("CONT");

    /// <summary>Ends the server.</summary>
    public void Kill()
    {
        process.Kill();
        process.WaitForExit();
    }

    /// <summary>Starts it again after <see cref="Kill"/>.</summary>
    public void StartAgain()
    {
        process.Dispose();
        process = StartProcess();
        WaitForIt();
        Load(Mouth);
        Load(Earpiece);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (!process.HasExited)
        {
            Kill();
        }

        process.Dispose();
        folder.Delete(recursive: true);
    }

    private static string? Missing(string program) =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(f => File.Exists(Path.Combine(f, program)))
            ? null
            : $"{program} is not installed";

    private Process StartProcess()
    {
        File.Delete(Socket);
        ProcessStartInfo start = new("pulseaudio")
        {
            ArgumentList =
            {
                "-n", "--daemonize=no", "--exit-idle-time=-1", "--use-pid-file=no", "--log-target=file:" + Path.Combine(folder.FullName, "log"),
                "-L", $"module-native-protocol-unix socket={Socket} auth-anonymous=1",
            },
        };
        start.Environment["XDG_RUNTIME_DIR"] = folder.FullName;
        start.Environment["HOME"] = folder.FullName;
        start.Environment.Remove("PULSE_SERVER");
        return Process.Start(start) ?? throw new InvalidOperationException("pulseaudio did not start");
    }

    private void WaitForIt()
    {
        using CancellationTokenSource over = new(Patience);
        while (!File.Exists(Socket))
        {
            if (process.HasExited || over.IsCancellationRequested)
            {
                string log = Path.Combine(folder.FullName, "log");
                string why = File.Exists(log) ? File.ReadAllText(log) : "no log";
                Dispose();
                throw new InvalidOperationException($"pulseaudio can't run here: {why.ReplaceLineEndings(" ")}");
            }

            over.Token.WaitHandle.WaitOne(20);
        }
    }

    private string Control(params string[] words)
    {
        ProcessStartInfo start = new("pactl", ["-s", Address, .. words]) { RedirectStandardOutput = true, RedirectStandardError = true };
        using Process run = Process.Start(start) ?? throw new InvalidOperationException("pactl did not start");
        Task<string> complaint = run.StandardError.ReadToEndAsync();
        string said = run.StandardOutput.ReadToEnd();
        run.WaitForExit();
        return run.ExitCode == 0 ? said : throw new InvalidOperationException($"pactl {string.Join(' ', words)}: {complaint.Result}");
    }

    private void Signal(string name)
    {
        using Process run = Process.Start("kill", [$"-{name}", process.Id.ToString(CultureInfo.InvariantCulture)]);
        run.WaitForExit();
    }
}
