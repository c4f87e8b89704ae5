namespace HandsFree.App.Homes;

/// <summary>The one folder in which all data of a home lies.</summary>
/// <param name="folder">Where; need not exist yet.</param>
/// <param name="states">Where this device keeps its secrets of journals; not in the home, so that who copies a home can't read it.</param>
internal sealed class HomeFolder(string folder, string states)
{
    /// <summary>The folder, a full path.</summary>
    public string Path { get; } = System.IO.Path.GetFullPath(folder);

    /// <summary>Where this device keeps its secrets of journals.</summary>
    public string States { get; } = System.IO.Path.GetFullPath(states);

    /// <summary>The sound devices of this machine.</summary>
    public string SoundFile => System.IO.Path.Combine(States, "sound.json");

    /// <summary>The home's settings.</summary>
    public string SettingsFile => File("home.json");

    /// <summary>The residents.</summary>
    public string RosterFile => File("roster.json");

    /// <summary>The home's own rules.</summary>
    public string RulesFile => File("rules.json");

    /// <summary>The journal.</summary>
    public string JournalFile => File("journal.db");

    /// <summary>The view of the journal, sealed; can be thrown away.</summary>
    public string ViewFile => File("journal.view");

    /// <summary>Roster, settings and rules as the journal has them, sealed; can be thrown away.</summary>
    public string HomeViewFile => File("journal.home");

    /// <summary>The recordings that are kept, sealed; not there where none is.</summary>
    public string AudioFolder => File("audio");

    /// <summary>The keys under which is sealed what rounds were told.</summary>
    public string ShiftKeysFolder => File("told");

    /// <summary>Held by the program that runs a round; another one does not take it up meanwhile.</summary>
    public string RunningFile(string round) => File($"running-{round}");

    /// <summary>The log, without personal data.</summary>
    public string LogFile => System.IO.Path.Combine(Path, "logs", "handsfree.log");

    /// <summary>Is there once the cautions were shown.</summary>
    public string CautionsMark => File("cautions-shown");

    /// <summary>Whether something lies here that only a journal leaves, and no journal: it was here, whatever the device remembers.</summary>
    public bool HasLostJournal => Exists && !System.IO.File.Exists(JournalFile)
        && (Directory.EnumerateFiles(Path, "journal.view*").Any() || Directory.EnumerateFiles(Path, "journal.home*").Any() || Directory.Exists(AudioFolder));

    /// <summary>Whether the folder is there.</summary>
    public bool Exists => Directory.Exists(Path);

    /// <summary>Makes a folder for this user alone, where it is not there.</summary>
    /// <exception cref="IOException">It can't be made.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be made.</exception>
    public static void Make(string folder)
    {
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(folder); // the user's own data folder is closed to others there
        }
        else
        {
            Directory.CreateDirectory(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    private string File(string name) => System.IO.Path.Combine(Path, name);
}
