using System.CommandLine;
using HandsFree.App.Demo;

namespace HandsFree.Benchmarks.Live;

/// <summary>"long-shift": eight hours in the room's time with two hundred device losses.</summary>
internal static class LongShiftCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make()
    {
        Option<int> hours = new("--hours") { Description = "Length of the shift, in the room's time", DefaultValueFactory = _ => 8 };
        Option<int> losses = new("--losses") { Description = "How often the microphone goes and comes back", DefaultValueFactory = _ => 200 };
        Command command = new("long-shift", "A long shift in one session, in simulated time, with a microphone that goes and comes: memory, lost frames, stuck states") { hours, losses };
        command.SetAction(parsed =>
        {
            DirectoryInfo folder = Directory.CreateTempSubdirectory("handsfree-long-");
            try
            {
                LongShift shift = new()
                {
                    Length = TimeSpan.FromHours(parsed.GetValue(hours)),
                    Losses = parsed.GetValue(losses),
                    Demo = Path.Combine(AppContext.BaseDirectory, DemoParts.FolderName),
                    Write = Console.WriteLine,
                };
                LongShiftResult result = shift.Run(folder.FullName);
                Console.WriteLine($"{result.End}: {result.Readings} readings, {result.Frames} frames, {result.Lost} lost in {result.Losses} device losses, {result.Late} events after the end");
                return result.End == App.Session.SessionEnd.Goodbye ? 0 : 1;
            }
            finally
            {
                folder.Delete(recursive: true);
            }
        });
        return command;
    }
}
