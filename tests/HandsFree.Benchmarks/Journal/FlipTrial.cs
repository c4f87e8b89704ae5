using HandsFree.Benchmarks.Micro;
using HandsFree.Core.Journal;
using HandsFree.Store.Journaling;

namespace HandsFree.Benchmarks.Journals;

/// <summary>One byte of every page is flipped, a page at a time. Verifying finds it, or every event is still what it was.</summary>
internal static class FlipTrial
{
    private const int PageSize = 4096;

    public static int Run(int events, int seed, TextWriter output)
    {
        using TrialFolder folder = TrialFolder.New();
        using (Store.Journaling.Journal journal = folder.Open())
        {
            journal.AppendAll([.. Enumerable.Range(0, events).Select(i => (ReadOnlyMemory<byte>)JournalEventCodec.Encode(ShiftEvents.Event(i)))]);
        }

        byte[] whole = File.ReadAllBytes(folder.File);
        Random random = new(seed);
        int found = 0, harmless = 0, missed = 0;
        for (int page = 0; page < whole.Length / PageSize; page++)
        {
            int at = (page * PageSize) + random.Next(PageSize);
            byte[] flipped = (byte[])whole.Clone();
            flipped[at] ^= (byte)random.Next(1, 256);
            Clear(folder);
            File.WriteAllBytes(folder.File, flipped);
            (JournalVerdict? verdict, JournalError? error) = JournalVerification.Verify(folder.File, folder.States);
            if (error is not null || verdict!.Findings.Count > 0)
            {
                found++;
            }
            else if (SameEvents(folder, events))
            {
                harmless++;
            }
            else
            {
                missed++;
                output.WriteLine($"page {page + 1}, byte {at % PageSize}: not found, and an event is changed");
            }
        }

        output.WriteLine($"pages {whole.Length / PageSize}, found {found}, nothing changed by it {harmless}, missed {missed}");
        return missed == 0 ? 0 : 1;
    }

    private static void Clear(TrialFolder folder)
    {
        foreach (string file in new[] { $"{folder.File}-wal", $"{folder.File}-shm" })
        {
            File.Delete(file);
        }
    }

    private static bool SameEvents(TrialFolder folder, int events)
    {
        using Store.Journaling.Journal journal = folder.Open();
        return journal.Count == events && journal.ReadFrom(1)
            .All(entry => entry.Body.Span.SequenceEqual(JournalEventCodec.Encode(ShiftEvents.Event((int)entry.Sequence - 1))));
    }
}
