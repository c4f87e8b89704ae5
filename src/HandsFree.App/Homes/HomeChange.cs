using HandsFree.App.Files;
using System.Text;
using HandsFree.App.Journals;
using HandsFree.App.Unlocking;
using HandsFree.Core.Files;
using HandsFree.Core.Journal;
using HandsFree.Core.People;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Store.Journaling;

namespace HandsFree.App.Homes;

/// <summary>The one way in which roster, settings and own rules of a home change. As long as nobody is set up they are files; afterwards they
/// are events of the journal, sealed, signed by who changed them, and her role is looked at here and wherever they are read.</summary>
internal static class HomeChange
{
    /// <summary>Other residents, or other limits: for a nurse or supervisor.</summary>
    /// <returns>Null, or one line that says why nothing was changed.</returns>
    public static string? Roster(Home home, Unlocker unlocker, Roster after) => Homes.Home.IsSealed(home.Folder)
        ? Written(home, unlocker, Role.Nurse, "the roster", journal => journal.Desk.KeepRoster(home, after))
        : Kept(home, unlocker, after) ?? new RosterWriter(home.Settings).Write(home.Folder.RosterFile, after);

    /// <summary>Other settings: for a supervisor. Where the units change, the roster is written anew in them.</summary>
    /// <param name="home">As it is.</param>
    /// <param name="unlocker">Opens the journal.</param>
    /// <param name="json">The whole content of home.json.</param>
    /// <returns>Null, or a line for each thing that is wrong; then nothing was changed.</returns>
    public static IReadOnlyList<string> Settings(Home home, Unlocker unlocker, string json)
    {
        List<FileError> errors = [];
        HomeSettings after = SettingsReader.Read(home.Folder.SettingsFile, Encoding.UTF8.GetBytes(json), home.Settings.TimeZone, errors);
        if (errors.Count > 0)
        {
            return [.. errors.Select(error => error.ToString())];
        }

        string? wrong = Homes.Home.IsSealed(home.Folder)
            ? Written(home, unlocker, Role.Supervisor, "the settings", journal =>
            {
                journal.Desk.KeepFile(HomeKept.SettingsName, json);
                journal.Desk.KeepRoster(home with { Settings = after }, home.Roster);
            })
            : AtomicFile.Write(home.Folder.SettingsFile, Encoding.UTF8.GetBytes(json))
                ?? (after.RosterUnits == home.Settings.RosterUnits ? null : new RosterWriter(after).Write(home.Folder.RosterFile, home.Roster));
        return wrong is null ? [] : [wrong];
    }

    /// <summary>Other rules of the home's own: for a supervisor.</summary>
    /// <param name="home">As it is.</param>
    /// <param name="unlocker">Opens the journal.</param>
    /// <param name="json">The whole content of rules.json.</param>
    /// <returns>Empty, or a line for each thing that is wrong; then nothing was changed.</returns>
    public static IReadOnlyList<string> Rules(Home home, Unlocker unlocker, string json)
    {
        RulebookLoading loading = Rulebook.Load(new RuleFile(home.Folder.RulesFile, json));
        if (loading.Errors.Count > 0)
        {
            return [.. loading.Errors.Select(error => error.ToString())];
        }

        string? wrong = Homes.Home.IsSealed(home.Folder)
            ? Written(home, unlocker, Role.Supervisor, "the rules", journal => journal.Desk.KeepFile(HomeKept.RulesName, json))
            : AtomicFile.Write(home.Folder.RulesFile, Encoding.UTF8.GetBytes(json));
        return wrong is null ? [] : [wrong];
    }

    /// <summary>Takes the files of a home into its journal, where the first person was just set up, and deletes them.</summary>
    /// <param name="home">As its files describe it.</param>
    /// <param name="journal">Opened by that person.</param>
    /// <exception cref="JournalWriteException">Something was not written; the files stay.</exception>
    /// <exception cref="IOException">A file can't be read or deleted.</exception>
    /// <exception cref="UnauthorizedAccessException">A file may not be read or deleted.</exception>
    public static void TakeIn(Home home, HomeJournal journal)
    {
        foreach ((string path, string name) in new[] { (home.Folder.SettingsFile, HomeKept.SettingsName), (home.Folder.RulesFile, HomeKept.RulesName) })
        {
            if (File.Exists(path))
            {
                journal.Desk.KeepFile(name, File.ReadAllText(path));
            }
        }

        if (home.Roster.Residents.Count > 0)
        {
            journal.Desk.KeepRoster(home, home.Roster, again: true);
        }

        foreach (string path in new[] { home.Folder.SettingsFile, home.Folder.RulesFile, home.Folder.RosterFile }.Where(File.Exists))
        {
            Erase(path);
        }
    }

    private static string? Written(Home home, Unlocker unlocker, Role least, string what, Action<HomeJournal> write)
    {
        (HomeJournal? opened, string? error) = HomeJournal.Open(home.Folder, unlocker);
        using HomeJournal? journal = opened;
        if (journal is null)
        {
            return error;
        }

        if (journal.Holder is { } holder && holder.Role < least)
        {
            return least == Role.Nurse ? $"only a nurse or a supervisor changes {what}" : $"only a supervisor changes {what}";
        }

        try
        {
            write(journal);
            return null;
        }
        catch (Exception wrong) when (wrong is JournalReadException or JournalWriteException or InvalidDataException)
        {
            return wrong.Message;
        }
    }

    // Before the file: a roster that is in force stands in the journal. A home without a journal gets it with its first round.
    private static string? Kept(Home home, Unlocker unlocker, Roster after)
    {
        if (!JournalFile.IsBegun(home.Folder))
        {
            return null;
        }

        (HomeJournal? opened, string? error) = HomeJournal.Open(home.Folder, unlocker);
        using HomeJournal? journal = opened;
        try
        {
            journal?.Desk.KeepRoster(home, after);
            return error;
        }
        catch (Exception wrong) when (wrong is JournalReadException or JournalWriteException or InvalidDataException)
        {
            return wrong.Message;
        }
    }

    // Overwritten before it goes; what a disk keeps of overwritten bytes is the disk's.
    private static void Erase(string path)
    {
        using (FileStream file = new(path, FileMode.Open, FileAccess.Write))
        {
            file.Write(new byte[file.Length]);
            file.Flush(flushToDisk: true);
        }

        File.Delete(path);
    }
}
