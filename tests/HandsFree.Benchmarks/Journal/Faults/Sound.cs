using HandsFree.Benchmarks.Micro;
using HandsFree.Core.Journal;
using HandsFree.Store.Journaling;

namespace HandsFree.Benchmarks.Journals.Faults;

/// <summary>That a journal is whole.</summary>
internal static class Sound
{
    /// <summary>The event of a number, as trials write them.</summary>
    public static byte[] Body(long sequence) => JournalEventCodec.Encode(ShiftEvents.Event((int)sequence - 1));

    /// <summary>It verifies, has so many events at least, and each is the one of its number.</summary>
    public static long Holds(TrialFolder folder, long atLeast)
    {
        (JournalVerdict? verdict, JournalError? error) = JournalVerification.Verify(folder.File, folder.States);
        FaultMissedException.Unless(error is null, error?.Message ?? "");
        FaultMissedException.Unless(verdict!.Findings.Count == 0, string.Join("; ", verdict.Findings));
        using Store.Journaling.Journal journal = folder.Open();
        FaultMissedException.Unless(journal.Count >= atLeast, $"{journal.Count} events of {atLeast} that were confirmed");
        FaultMissedException.Unless(journal.ReadFrom(1).All(e => e.Body.Span.SequenceEqual(Body(e.Sequence))), "an event is not what was written");
        return journal.Count;
    }
}
