using HandsFree.App.Homes;
using HandsFree.Benchmarks.Micro;
using HandsFree.Core.Journal;

namespace HandsFree.Benchmarks.Journals.Faults;

/// <summary>The clock runs ahead by years for a while and is set back, or is set back by a day: no event is lost from the journal or from the
/// view that a round needs, and the kept view is the same as one made anew.</summary>
internal static class WrongClock
{
    private const int Batch = 250; // enough for the view to be kept and trimmed in between

    public static string Try(int times)
    {
        int seen = 0;
        foreach (TimeSpan wrong in new[] { TimeSpan.FromDays(3650), TimeSpan.FromDays(-1), TimeSpan.FromDays(-3650) })
        {
            using TrialFolder folder = TrialFolder.New();
            int number = 0;
            Append(folder, Batch * times, TimeSpan.Zero, ref number);
            Append(folder, Batch * times, wrong, ref number);
            Append(folder, Batch * times, TimeSpan.Zero, ref number);
            IReadOnlyList<string> kept = Ids(folder);
            File.Delete(Path.Combine(folder.Path, "journal.view"));
            IReadOnlyList<string> anew = Ids(folder);
            FaultMissedException.Unless(kept.SequenceEqual(anew), $"the kept view has {kept.Count} events, one made anew {anew.Count} (clock wrong by {wrong.TotalDays} days)");
            // What is dated ten years back is old to whoever asks by time, and the view leaves it out.
            FaultMissedException.Unless(wrong < -PresentEvents.Window || anew.Count == number, $"{anew.Count} of {number} events in the view (clock wrong by {wrong.TotalDays} days)");
            seen += number;
        }

        return $"held: clock ahead by ten years and set back, behind by a day and by ten years: {seen} events, the kept view as one made anew, nothing of the present left out";
    }

    private static void Append(TrialFolder folder, int count, TimeSpan wrong, ref int number)
    {
        using HomeJournal journal = folder.OpenHome();
        List<JournalEvent> events = [];
        for (int i = 0; i < count; i++)
        {
            JournalEvent happened = ShiftEvents.Event(number++);
            events.Add(happened with { At = happened.At + wrong });
        }

        journal.Events.AppendAll(events);
        journal.Present();
    }

    private static List<string> Ids(TrialFolder folder)
    {
        using HomeJournal journal = folder.OpenHome();
        return [.. journal.Present().Select(e => e.Id)];
    }
}
