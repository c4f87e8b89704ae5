using HandsFree.Core.Journal;
using HandsFree.Store.Journaling;

namespace HandsFree.App.Homes;

/// <summary>Reads all that the journal of a home holds, and makes none where there is none.</summary>
internal static class JournalContent
{
    /// <summary>The events, oldest first, none where there is no journal yet; or null and one line that says what is wrong.</summary>
    public static (IReadOnlyList<JournalEvent>? Events, string? Error) Read(HomeFolder folder)
    {
        if (!File.Exists(folder.JournalFile))
        {
            return ([], null);
        }

        (HomeJournal? opened, string? error) = HomeJournal.Open(folder);
        using HomeJournal? journal = opened;
        try
        {
            return (journal?.All(), error);
        }
        catch (Exception wrong) when (wrong is JournalReadException or InvalidDataException)
        {
            return (null, $"{folder.JournalFile}: {wrong.Message}");
        }
    }
}
