using System.CommandLine;
using System.Globalization;
using HandsFree.App.Demo;
using HandsFree.Benchmarks.Statistics;
using HandsFree.TestKit.Sound;

namespace HandsFree.Benchmarks.Live;

/// <summary>"live-latency": the time from the end of speech to the first sound of the answer, through a sound server.</summary>
internal static class LiveLatencyCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make()
    {
        Option<string> engine = new("--engine") { Description = "The engine that hears", DefaultValueFactory = _ => "words" };
        Option<string[]> residents = new("--resident") { Description = "Only these residents of the demo; may be given several times" };
        Option<int> minutes = new("--minutes") { Description = "At most so long", DefaultValueFactory = _ => 30 };
        Command command = new("live-latency", "From the end of speech to the first sound of the answer, in a live shift of the demo") { engine, residents, minutes };
        command.SetAction(parsed => LiveShiftCommand.WithServer((server, folder) =>
        {
            LiveShift shift = LiveShift.Read(Path.Combine(AppContext.BaseDirectory, DemoParts.FolderName), parsed.GetValue(residents) ?? []);
            LiveShiftResult result = shift.Run(
                server, parsed.GetValue(engine)!, folder, TimeSpan.FromMinutes(parsed.GetValue(minutes)), _ => { }, recorded: true);
            foreach (AnswerTime time in result.Answers.OrderBy(a => a.Beyond))
            {
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{time.Beyond.TotalMilliseconds,6:0} ms beyond {time.Quiet.TotalMilliseconds:0} ms of quiet  {time.Words}"));
            }

            double[] beyond = [.. result.Answers.Select(a => a.Beyond.TotalMilliseconds)];
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{beyond.Length} answers: median {Quantile.Of(beyond, 0.5):0} ms, 95th percentile {Quantile.Of(beyond, 0.95):0} ms beyond the endpointer's quiet (aims 300 and 800); journal {(result.IsExact ? "exact" : "not exact")}"));
            return beyond.Length > 0 ? 0 : 1;
        }));
        return command;
    }
}
