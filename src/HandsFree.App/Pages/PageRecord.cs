using HandsFree.App.Homes;
using HandsFree.Core.Journal;

namespace HandsFree.App.Pages;

/// <summary>What a page is made of.</summary>
/// <param name="Events">The events that matter, oldest first.</param>
/// <param name="Entries">How many entries the journal has.</param>
/// <param name="By">Who unlocked it; null where nobody is set up.</param>
/// <param name="Anchor">The beginning of the last entry's hash; null where there is no journal yet.</param>
internal sealed record PageRecord(IReadOnlyList<JournalEvent> Events, long Entries, string? By, string? Anchor)
{
    /// <summary>Where there is no journal yet.</summary>
    public static PageRecord None { get; } = new([], 0, null, null);

    /// <summary>The present alone.</summary>
    public static PageRecord Present(HomeJournal journal) => Of(journal, journal.Present());

    /// <summary>The present, and everything from a moment on.</summary>
    public static PageRecord Since(HomeJournal journal, DateTimeOffset from) => Of(
        journal, [.. journal.Present().Where(happened => happened.At < from), .. journal.Since(from)]);

    private static PageRecord Of(HomeJournal journal, IReadOnlyList<JournalEvent> events)
    {
        (long entries, string hash) = journal.End;
        return new PageRecord(events, entries, journal.Holder?.Person, hash);
    }
}
