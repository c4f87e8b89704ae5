using HandsFree.App.Commands;
using HandsFree.App.Homes;
using HandsFree.Store.Journaling;

namespace HandsFree.App.Journals;

/// <summary>Opens the journal of a home for a command that only reads it.</summary>
internal static class JournalFile
{
    /// <summary>Does the work, or refuses: there is no journal, or it can't be opened.</summary>
    /// <param name="folder">The home's.</param>
    /// <param name="host">Says what is wrong.</param>
    /// <param name="work">Returns an exit code; what it throws because an event can't be read is said too, as a check that failed.</param>
    public static int Reading(HomeFolder folder, CommandHost host, Func<HomeJournal, int> work)
    {
        if (!File.Exists(folder.JournalFile))
        {
            return host.Refuse($"{folder.JournalFile}: there is no journal yet; it begins with the first round, or name another folder with --home");
        }

        (HomeJournal? opened, string? error) = HomeJournal.Open(folder);
        using HomeJournal? journal = opened;
        if (journal is null)
        {
            return host.Refuse(error!);
        }

        try
        {
            return work(journal);
        }
        catch (Exception wrong) when (wrong is JournalReadException or InvalidDataException)
        {
            host.Refuse($"{folder.JournalFile}: {wrong.Message}; keep the file as it is and restore a backup beside it");
            return ExitCodes.CheckFailed;
        }
    }
}
