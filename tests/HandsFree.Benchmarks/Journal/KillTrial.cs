using System.Diagnostics;
using System.Globalization;
using HandsFree.Benchmarks.Micro;
using HandsFree.Core.Journal;
using HandsFree.Store.Journaling;

namespace HandsFree.Benchmarks.Journals;

/// <summary>A writing process is killed (SIGKILL) again and again, on one growing journal. After each kill the journal opens, holds all that
/// was announced and at most one event more, and verifies.</summary>
internal static class KillTrial
{
    public static int Run(int kills, int seed, TextWriter output)
    {
        using TrialFolder folder = TrialFolder.New();
        Random random = new(seed);
        int lost = 0, broken = 0;
        long events = 0;
        for (int kill = 0; kill < kills; kill++)
        {
            long announced = WriteAndKill(folder, random);
            using (Store.Journaling.Journal journal = folder.Open())
            {
                events = journal.Count;
                lost += events < announced ? 1 : 0;
                broken += Same(journal, Math.Max(1, announced - 50)) ? 0 : 1;
            }

            (JournalVerdict? verdict, JournalError? _) = JournalVerification.Verify(folder.File, folder.States);
            broken += verdict is { Findings.Count: 0 } ? 0 : 1;
            if ((kill + 1) % 100 == 0)
            {
                output.WriteLine($"{kill + 1} kills, {events} events: {lost} with a value lost, {broken} broken");
            }
        }

        output.WriteLine($"kills {kills}, events {events}, with a confirmed value lost {lost}, broken {broken}");
        return lost + broken == 0 ? 0 : 1;
    }

    private static long WriteAndKill(TrialFolder folder, Random random)
    {
        using Process writer = WriterProcess.Start(folder.Path, null);
        long announced = 0;
        int lines = random.Next(0, 40);
        for (int line = 0; line < lines && writer.StandardOutput.ReadLine() is { } text; line++)
        {
            announced = long.Parse(text, CultureInfo.InvariantCulture);
        }

        // Somewhere within the next append, or at the start of the process where nothing was awaited.
        using ManualResetEventSlim pause = new();
        pause.Wait(TimeSpan.FromMilliseconds(random.NextDouble() * (lines == 0 ? 400 : 12)));
        writer.Kill();
        while (writer.StandardOutput.ReadLine() is { } text && long.TryParse(text, CultureInfo.InvariantCulture, out long number))
        {
            announced = number;
        }

        writer.WaitForExit();
        return announced;
    }

    private static bool Same(Store.Journaling.Journal journal, long from) => journal.Count < from || journal.ReadFrom(from)
        .All(entry => entry.Body.Span.SequenceEqual(JournalEventCodec.Encode(ShiftEvents.Event((int)entry.Sequence - 1))));
}
