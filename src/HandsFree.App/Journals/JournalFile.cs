using HandsFree.App.Commands;
using HandsFree.App.Homes;
using HandsFree.App.Unlocking;
using HandsFree.Store.Journaling;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Journals;

/// <summary>Opens the journal of a home for a command that only reads it.</summary>
internal static class JournalFile
{
    /// <summary>The line for a home without a journal.</summary>
    public static string NoneYet(HomeFolder folder) =>
        $"{folder.JournalFile}: there is no journal yet; it begins with the first round, or name another folder with --home";

    /// <summary>Whether the home has a journal, or had one: where the file is gone, opening it says so.</summary>
    public static bool IsBegun(HomeFolder folder) => File.Exists(folder.JournalFile) || Journal.WasHere(folder.JournalFile, folder.States) || folder.HasLostJournal;

    /// <summary>Does the work, or refuses: there is no journal, or it can't be opened.</summary>
    /// <param name="services">The home's folder, and who unlocks.</param>
    /// <param name="host">Says what is wrong.</param>
    /// <param name="work">Returns an exit code; what it throws because an event can't be read is said too, as a check that failed.</param>
    public static int Reading(IServiceProvider services, CommandHost host, Func<HomeJournal, int> work)
    {
        HomeFolder folder = services.GetRequiredService<HomeFolder>();
        if (!IsBegun(folder))
        {
            return host.Refuse(NoneYet(folder));
        }

        (HomeJournal? opened, string? error) = HomeJournal.Open(folder, services.GetRequiredService<Unlocker>());
        using HomeJournal? journal = opened;
        if (journal is null)
        {
            return host.Refuse(error!);
        }

        try
        {
            return work(journal);
        }
        catch (Exception wrong) when (wrong is JournalReadException or JournalWriteException or InvalidDataException)
        {
            host.Refuse($"{folder.JournalFile}: {wrong.Message}; keep the file as it is and restore a backup beside it");
            return ExitCodes.CheckFailed;
        }
    }
}
