using System.CommandLine;
using HandsFree.Benchmarks.Journals.Faults;

namespace HandsFree.Benchmarks.Journals;

/// <summary>The journal's speed, and the faults that are tried on it.</summary>
internal static class JournalCommands
{
    /// <summary>"journal-speed".</summary>
    public static Command Speed()
    {
        Option<int> events = new("--events") { Description = "How many events the journal has", DefaultValueFactory = _ => 1_000_000 };
        Command command = new("journal-speed", "Appending one by one and in batches, beside the bare flush; opening with a view, rebuilding it, verifying") { events };
        command.SetAction(parsed => JournalSpeed.Run(parsed.GetValue(events), Console.Out));
        return command;
    }

    /// <summary>"journal-kill".</summary>
    public static Command Kill()
    {
        Option<int> kills = new("--kills") { Description = "How often", DefaultValueFactory = _ => 1000 };
        Option<int> seed = new("--seed") { Description = "Of the moments", DefaultValueFactory = _ => 7 };
        Command command = new("journal-kill", "Kills a writing process at random moments; nothing that it announced may be missing") { kills, seed };
        command.SetAction(parsed => KillTrial.Run(parsed.GetValue(kills), parsed.GetValue(seed), Console.Out));
        return command;
    }

    /// <summary>"journal-flip".</summary>
    public static Command Flip()
    {
        Option<int> events = new("--events") { Description = "How many events the journal has", DefaultValueFactory = _ => 1000 };
        Option<int> seed = new("--seed") { Description = "Of the bytes", DefaultValueFactory = _ => 7 };
        Command command = new("journal-flip", "Flips a byte in every page of 4 kB; each is found, or nothing is changed by it") { events, seed };
        command.SetAction(parsed => FlipTrial.Run(parsed.GetValue(events), parsed.GetValue(seed), Console.Out));
        return command;
    }

    /// <summary>"journal-power-cut".</summary>
    public static Command PowerCut()
    {
        Option<int> events = new("--events") { Description = "How many events are written", DefaultValueFactory = _ => 60 };
        Command command = new(
            "journal-power-cut", "Records a writer's writes with strace and ends them after each one, with and without what was not flushed") { events };
        command.SetAction(parsed => PowerCutTrial.Run(parsed.GetValue(events), Console.Out));
        return command;
    }

    /// <summary>"journal-writer": the process that is killed.</summary>
    public static Command Writer()
    {
        Argument<string> folder = new("FOLDER") { Description = "Gets journal.db and state" };
        Option<int> count = new("--count") { Description = "How many events, then it ends", DefaultValueFactory = _ => int.MaxValue };
        Command command = new("journal-writer", "Appends events and prints each number once it is flushed") { folder, count };
        command.Hidden = true;
        command.SetAction(parsed => WriterProcess.Write(parsed.GetValue(folder)!, parsed.GetValue(count), Console.Out));
        return command;
    }

    /// <summary>"journal-opener": the process that opens a journal and does nothing else.</summary>
    public static Command Opener()
    {
        Argument<string> folder = new("FOLDER") { Description = "Has journal.db and state" };
        Command command = new("journal-opener", "Opens a journal and says how long it took") { folder };
        command.Hidden = true;
        command.SetAction(parsed => OpenerProcess.Open(parsed.GetValue(folder)!, Console.Out));
        return command;
    }

    /// <summary>"journal-faults".</summary>
    public static Command Faults()
    {
        Option<int> times = new("--times") { Description = "How often each", DefaultValueFactory = _ => 20 };
        Option<string?> only = new("--only") { Description = $"One of: {string.Join(", ", Fault.All.Select(f => f.Name))}" };
        Command command = new("journal-faults", "Full disk, file limit, read-only, locked file, several writers, truncated file, wrong clock, calendar") { times, only };
        command.SetAction(parsed => Fault.Run(parsed.GetValue(times), parsed.GetValue(only), Console.Out));
        return command;
    }

    /// <summary>"journal-locker": the process that keeps the file locked.</summary>
    public static Command Locker()
    {
        Argument<string> folder = new("FOLDER") { Description = "Has journal.db" };
        Option<int> seconds = new("--seconds") { Description = "How long" };
        Command command = new("journal-locker", "Keeps a journal's file locked") { folder, seconds };
        command.Hidden = true;
        command.SetAction(parsed => LockerProcess.Lock(parsed.GetValue(folder)!, parsed.GetValue(seconds), Console.Out));
        return command;
    }
}
