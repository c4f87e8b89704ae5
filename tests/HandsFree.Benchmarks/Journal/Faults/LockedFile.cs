using System.Diagnostics;
using HandsFree.App.Session;
using HandsFree.Benchmarks.Micro;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Store.Journaling;

namespace HandsFree.Benchmarks.Journals.Faults;

/// <summary>Another process has the file locked for longer than the journal's waiting time of 5 seconds: the session says so, waits its
/// turn, and the value is saved.</summary>
internal static class LockedFile
{
    private const int Seconds = 7;

    public static string Try(int times)
    {
        using TrialFolder folder = TrialFolder.New();
        using Store.Journaling.Journal journal = folder.Open();
        int said = 0;
        JournalPen pen = new(new EventJournal<JournalEvent>(journal, e => JournalEventCodec.Encode(e), b => JournalEventCodec.Decode(b.Body.Span)), () => said++);
        double longest = 0;
        for (int time = 0; time < Math.Min(times, 3); time++)
        {
            using Process locker = ThisProgram.Start(["journal-locker", folder.Path, "--seconds", $"{Seconds}"]);
            FaultMissedException.Unless(locker.StandardOutput.ReadLine() == "locked", "the other process did not lock");
            long begun = Stopwatch.GetTimestamp();
            var (_, answer) = pen.Write(new Effect.Record($"b{time}", [ShiftEvents.Event(time)]), TimeProvider.System.GetUtcNow());
            longest = Math.Max(longest, Stopwatch.GetElapsedTime(begun).TotalSeconds);
            FaultMissedException.Unless(answer is DialogueEvent.Saved saved && saved.Sequence == time + 1, "not saved");
            FaultMissedException.Unless(said == time + 1, $"said {said} times that it waits");
            locker.WaitForExit();
        }

        Sound.Holds(folder, Math.Min(times, 3));
        return $"held: {Math.Min(times, 3)} locks of {Seconds} s by another process waited for (longest {longest:0.0} s), said once each, 0 refused";
    }
}
