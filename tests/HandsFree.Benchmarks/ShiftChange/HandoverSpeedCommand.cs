using System.CommandLine;
using HandsFree.App.Hearing;

namespace HandsFree.Benchmarks.ShiftChange;

/// <summary>"handover-speed": how long an answer of the handover takes after the end of the question.</summary>
internal static class HandoverSpeedCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make()
    {
        Argument<string> home = new("HOME") { Description = "A home with its record; simulated-home makes one" };
        Argument<string> folder = new("FOLDER") { Description = "Recordings with a transcripts.tsv; those with a question of the handover are asked" };
        Option<string> engine = new("--engine") { Description = "The engine that hears", DefaultValueFactory = _ => EngineNames.Words };
        Option<int> rounds = new("--rounds") { Description = "How often everything is asked", DefaultValueFactory = _ => 3 };
        Option<int> threads = new("--threads") { Description = "Processor threads for one hearing", DefaultValueFactory = _ => 1 };
        engine.AcceptOnlyFromAmong([.. EngineNames.All]);
        Command command = new("handover-speed", "From the end of a spoken question to the answer's text, on a home of any size") { home, folder, engine, rounds, threads };
        command.SetAction(parsed => Failures.Told(Console.Error, () => new HandoverSpeed(parsed.GetValue(home)!, parsed.GetValue(folder)!)
        {
            Engine = parsed.GetValue(engine)!,
            Rounds = parsed.GetValue(rounds),
            Threads = parsed.GetValue(threads),
        }.Run(Console.Out)));
        return command;
    }
}
