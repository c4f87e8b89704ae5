using System.CommandLine;
using HandsFree.App.Demo;
using HandsFree.TestKit.Sound;

namespace HandsFree.Benchmarks.Live;

/// <summary>"live-shift": is the journal exactly right after a shift that was heard through a sound server?</summary>
internal static class LiveShiftCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make()
    {
        Option<string> engine = new("--engine") { Description = "The engine that hears", DefaultValueFactory = _ => "words" };
        Option<string[]> residents = new("--resident") { Description = "Only these residents of the demo; may be given several times" };
        Option<int> minutes = new("--minutes") { Description = "At most so long", DefaultValueFactory = _ => 30 };
        Command command = new("live-shift", "A shift of the demo spoken into a null sink, heard live by \"handsfree round\" on its monitor") { engine, residents, minutes };
        command.SetAction(parsed => WithServer((server, folder) =>
        {
            LiveShift shift = LiveShift.Read(Path.Combine(AppContext.BaseDirectory, DemoParts.FolderName), parsed.GetValue(residents) ?? []);
            LiveShiftResult result = shift.Run(
                server, parsed.GetValue(engine)!, folder, TimeSpan.FromMinutes(parsed.GetValue(minutes)), Console.WriteLine);
            Console.WriteLine($"exit code {result.ExitCode?.ToString() ?? "none"}; missing: {string.Join("; ", result.Journal.Missing)}; too much: {string.Join("; ", result.Journal.Unexpected)}");
            return result.IsExact ? 0 : 1;
        }));
        return command;
    }

    /// <summary>Runs something with a sound server of its own and an empty folder, both gone afterwards.</summary>
    /// <returns>Its exit code; 2 where no server can be started.</returns>
    public static int WithServer(Func<PulseServer, string, int> run)
    {
        if (PulseServer.WhyNot() is { } why)
        {
            Console.Error.WriteLine(why);
            return 2;
        }

        DirectoryInfo folder = Directory.CreateTempSubdirectory("handsfree-live-");
        try
        {
            using PulseServer server = PulseServer.Start();
            return run(server, folder.FullName);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
