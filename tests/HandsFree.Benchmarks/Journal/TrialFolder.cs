using HandsFree.App.Homes;
using HandsFree.App.Unlocking;
using HandsFree.Store.Journaling;
using HandsFree.Store.Keys;

namespace HandsFree.Benchmarks.Journals;

/// <summary>A folder with a journal and this device's part of it.</summary>
/// <param name="path">Where.</param>
internal sealed class TrialFolder(string path) : IDisposable
{
    public string Path => path;

    public string File => System.IO.Path.Combine(path, "journal.db");

    public string States => System.IO.Path.Combine(path, "state");

    public static TrialFolder New() => new(Directory.CreateTempSubdirectory("handsfree-trial-").FullName);

    /// <summary>The journal, unlocked by the device.</summary>
    public Store.Journaling.Journal Open() => Store.Journaling.Journal.Open(
        File, new JournalAccess(States, new Credential.Device(), TimeProvider.System)) is { Journal: { } journal }
        ? journal
        : throw new InvalidDataException($"{File} can't be opened");

    /// <summary>The journal as the program opens it.</summary>
    public HomeJournal OpenHome()
    {
        (HomeJournal? journal, string? error) = HomeJournal.Open(new HomeFolder(path, States), new Unlocker(Nobody.Around, null));
        return journal ?? throw new InvalidDataException(error);
    }

    public void Dispose() => Directory.Delete(path, recursive: true);
}
