using HandsFree.App.Unlocking;
using HandsFree.Core.Journal;
using HandsFree.Store.Journaling;

namespace HandsFree.App.Homes;

/// <summary>Reads what the present needs of the journal of a home, and makes none where there is none.</summary>
internal static class JournalContent
{
    /// <summary>The events, oldest first, none where there is no journal yet; or null and one line that says what is wrong.</summary>
    /// <param name="folder">The home's.</param>
    /// <param name="unlocker">Gives person and PIN.</param>
    /// <param name="what">What the reader looks at, for the record.</param>
    /// <param name="whole">All events; else those that the present needs.</param>
    public static (IReadOnlyList<JournalEvent>? Events, string? Error) Read(HomeFolder folder, Unlocker unlocker, string what, bool whole = false)
    {
        if (!File.Exists(folder.JournalFile))
        {
            return ([], null);
        }

        (HomeJournal? opened, string? error) = HomeJournal.Open(folder, unlocker);
        using HomeJournal? journal = opened;
        try
        {
            IReadOnlyList<JournalEvent>? events = whole ? journal?.All() : journal?.Present();
            journal?.Desk.Viewed(what);
            return (events, error);
        }
        catch (Exception wrong) when (wrong is JournalReadException or JournalWriteException or InvalidDataException)
        {
            return (null, $"{folder.JournalFile}: {wrong.Message}");
        }
    }
}
