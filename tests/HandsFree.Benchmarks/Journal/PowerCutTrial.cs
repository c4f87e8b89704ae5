using System.Diagnostics;
using System.Globalization;
using System.Text;
using HandsFree.Benchmarks.Micro;
using HandsFree.Core.Journal;
using HandsFree.Store.Journaling;

namespace HandsFree.Benchmarks.Journals;

/// <summary>A writer's writes are recorded with strace. For every one of them the disk is made as it was when the power went there: once with
/// all that had been written, once with only what had been flushed, once with the last write half done. In each the journal opens, holds
/// all that was announced, verifies, and is not behind what the device remembers of it.</summary>
internal static class PowerCutTrial
{
    private const string Strace = "strace";

    public static int Run(int events, TextWriter output)
    {
        using TrialFolder written = TrialFolder.New();
        written.Open().Dispose();
        byte[] before = File.ReadAllBytes(written.File);
        string place = Directory.GetFiles(Path.Combine(written.States, "places")).Single();
        (string Name, byte[] Before) seen = (Path.GetRelativePath(written.Path, place), File.ReadAllBytes(place));
        string log = Path.Combine(written.Path, "calls");
        try
        {
            using Process writer = WriterProcess.Start(
                written.Path, events, Strace, "-f", "-y", "-xx", "-s", "1000000", "-e", "trace=pwrite64,write,lseek,ftruncate,fsync,fdatasync", "-o", log);
            writer.StandardOutput.ReadToEnd();
            writer.WaitForExit();
        }
        catch (System.ComponentModel.Win32Exception)
        {
            output.WriteLine("strace is not here; install it to try power cuts");
            return 2;
        }

        FileWrite[] calls = [.. FileWrite.Of(File.ReadLines(log), written.Path)];
        int tried = 0, lost = 0, broken = 0;
        Disk all = new(before, seen.Name, seen.Before), flushed = new(before, seen.Name, seen.Before);
        long announced = 0;
        foreach (FileWrite call in calls)
        {
            if (call.Kind == FileWriteKind.Announced)
            {
                announced = long.Parse(Encoding.ASCII.GetString(call.Bytes), CultureInfo.InvariantCulture);
                continue;
            }

            if (call is { Kind: FileWriteKind.Written, Bytes.Length: > 1 })
            {
                Disk half = all.Copy();
                half.Apply(call with { Bytes = call.Bytes[..(call.Bytes.Length / 2)] });
                Try(half);
            }

            all.Apply(call);
            if (call.Kind == FileWriteKind.Flushed)
            {
                flushed.TakeFrom(all, call.File);
            }

            Try(all);
            Try(flushed);
        }

        void Try(Disk state)
        {
            tried++;
            state.WriteTo(written);
            (bool opens, long count) = Look(written);
            lost += opens && count < announced ? 1 : 0;
            broken += opens ? 0 : 1;
        }

        output.WriteLine($"writes and flushes {calls.Count(c => c.Kind != FileWriteKind.Announced)}, events {announced}, "
            + $"power cuts tried {tried}, with a confirmed value lost {lost}, broken {broken}");
        return announced == events && lost + broken == 0 ? 0 : 1;
    }

    private static (bool Opens, long Count) Look(TrialFolder disk)
    {
        (JournalVerdict? verdict, JournalError? _) = JournalVerification.Verify(disk.File, disk.States);
        if (verdict is not { Findings.Count: 0 })
        {
            return (false, 0);
        }

        using Store.Journaling.Journal journal = disk.Open();
        bool same = journal.ReadFrom(1).All(entry => entry.Body.Span.SequenceEqual(JournalEventCodec.Encode(ShiftEvents.Event((int)entry.Sequence - 1))));
        return (same, journal.Count);
    }
}
