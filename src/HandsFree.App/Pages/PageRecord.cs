using HandsFree.App.Homes;
using HandsFree.Core.Journal;

namespace HandsFree.App.Pages;

/// <summary>What a page is made of.</summary>
/// <param name="Events">The events that matter, oldest first.</param>
/// <param name="Entries">How many entries the journal has.</param>
/// <param name="By">Who unlocked it; null where nobody is set up.</param>
internal sealed record PageRecord(IReadOnlyList<JournalEvent> Events, long Entries, string? By)
{
    /// <summary>Where there is no journal yet.</summary>
    public static PageRecord None { get; } = new([], 0, null);

    /// <summary>The present alone.</summary>
    public static PageRecord Present(HomeJournal journal) => new(journal.Present(), journal.Events.Count, journal.Holder?.Person);

    /// <summary>The present, and everything from a moment on.</summary>
    public static PageRecord Since(HomeJournal journal, DateTimeOffset from) => new(
        [.. journal.Present().Where(happened => happened.At < from), .. journal.Since(from)], journal.Events.Count, journal.Holder?.Person);
}
