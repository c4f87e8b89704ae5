using System.Diagnostics;
using System.Globalization;
using HandsFree.App.Homes;
using HandsFree.Benchmarks.Micro;
using HandsFree.Core.Journal;
using HandsFree.Store.Journaling;

namespace HandsFree.Benchmarks.Journals;

/// <summary>How fast a journal is on this machine's disk.</summary>
internal static class JournalSpeed
{
    private const int Warm = 100;
    private const int Singles = 500;
    private const int Batch = 1000;
    private const int Flushes = 300;

    public static int Run(int events, TextWriter output)
    {
        using TrialFolder folder = TrialFolder.New();
        void Say(string what, double value, string unit) =>
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what,-52} {value,12:0.##} {unit}"));

        Say("bare flush before (4 kB written, fsync)", BareFlushes(folder), "/s");
        using (HomeJournal journal = folder.OpenHome())
        {
            for (int i = 0; i < Warm; i++)
            {
                journal.Events.Append(ShiftEvents.Event(i));
            }

            // Beside the disk's own rate, in the same minute: half before, half after, for it varies.
            double cpu = Cpu();
            double seconds = Seconds(() =>
            {
                for (int i = Warm; i < Warm + Singles; i++)
                {
                    journal.Events.Append(ShiftEvents.Event(i));
                }
            });
            Say("one by one, each flushed", Singles / seconds, "events/s");
            Say("  processor time of one", (Cpu() - cpu) / Singles * 1e6, "µs");
            Say("bare flush after", BareFlushes(folder), "/s");
            Say($"batches of {Batch}, encoding included", (events - Warm - Singles) / Seconds(() =>
            {
                for (int from = Warm + Singles; from < events; from += Batch)
                {
                    journal.Events.AppendAll(Enumerable.Range(from, Math.Min(Batch, events - from)).Select(ShiftEvents.Event));
                }
            }), "events/s");
        }

        Say("file", new FileInfo(folder.File).Length / 1e6, "MB");
        Say("events", events, "");
        double begun = Cpu();
        Say("open and view made anew", Seconds(() => Present(folder)), "s");
        Say("  processor time", Cpu() - begun, "s");
        Say("open with the view kept", Seconds(() => Present(folder)), "s");
        using (HomeJournal journal = folder.OpenHome())
        {
            for (int i = 0; i < 100; i++)
            {
                journal.Events.Append(ShiftEvents.Event(events + i));
            }
        }

        Say("open, view kept, 100 events since", Seconds(() => Present(folder)), "s");
        foreach (string line in OpenerProcess.Lines(folder))
        {
            output.WriteLine(line);
        }

        Say("verify without PIN", Seconds(() => JournalVerification.Verify(folder.File, folder.States)), "s");
        Say("events in the view", Present(folder), "");
        Say("view file", new FileInfo(Path.Combine(folder.Path, "journal.view")).Length / 1e6, "MB");
        Say("peak memory", Process.GetCurrentProcess().PeakWorkingSet64 / 1e6, "MB");
        return 0;
    }

    private static int Present(TrialFolder folder)
    {
        using HomeJournal journal = folder.OpenHome();
        return journal.Present().Count;
    }

    private static double BareFlushes(TrialFolder folder)
    {
        using FileStream file = new(Path.Combine(folder.Path, "bare"), FileMode.Create);
        byte[] page = new byte[4096];
        return Flushes / Seconds(() =>
        {
            for (int i = 0; i < Flushes; i++)
            {
                file.Write(page);
                file.Flush(flushToDisk: true);
            }
        });
    }

    private static double Cpu() => Process.GetCurrentProcess().TotalProcessorTime.TotalSeconds;

    private static double Seconds(Action work)
    {
        long begun = Stopwatch.GetTimestamp();
        work();
        return Stopwatch.GetElapsedTime(begun).TotalSeconds;
    }
}
