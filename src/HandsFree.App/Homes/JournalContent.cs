using HandsFree.App.Journals;
using HandsFree.App.Unlocking;
using HandsFree.Core.Journal;
using HandsFree.Store.Journaling;

namespace HandsFree.App.Homes;

/// <summary>Reads the journal of a home, and makes none where there is none.</summary>
internal static class JournalContent
{
    /// <summary>The events, oldest first, none where there is no journal yet; or null and one line that says what is wrong.</summary>
    /// <param name="folder">The home's.</param>
    /// <param name="unlocker">Gives person and PIN.</param>
    /// <param name="what">What the reader looks at, for the record.</param>
    /// <param name="whole">All events; else those that the present needs.</param>
    public static (IReadOnlyList<JournalEvent>? Events, string? Error) Read(HomeFolder folder, Unlocker unlocker, string what, bool whole = false) =>
        Look<IReadOnlyList<JournalEvent>>(folder, unlocker, what, journal => whole ? journal.All() : journal.Present(), []);

    /// <summary>What is read from the journal; the look is written into it.</summary>
    /// <param name="folder">The home's.</param>
    /// <param name="unlocker">Gives person and PIN.</param>
    /// <param name="what">What the reader looks at, for the record.</param>
    /// <param name="read">Reads it.</param>
    /// <param name="ifNone">What there is where there is no journal yet.</param>
    /// <returns>What was read; or null and one line that says what is wrong.</returns>
    public static (T? Content, string? Error) Look<T>(HomeFolder folder, Unlocker unlocker, string what, Func<HomeJournal, T> read, T ifNone)
        where T : class
    {
        if (!JournalFile.IsBegun(folder))
        {
            return (ifNone, null);
        }

        (HomeJournal? opened, string? error) = HomeJournal.Open(folder, unlocker);
        using HomeJournal? journal = opened;
        try
        {
            T? content = journal is null ? null : read(journal);
            journal?.Desk.Viewed(what);
            return (content, error);
        }
        catch (Exception wrong) when (wrong is JournalReadException or JournalWriteException or InvalidDataException)
        {
            return (null, $"{folder.JournalFile}: {wrong.Message}");
        }
    }
}
