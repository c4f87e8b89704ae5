using HandsFree.App.Homes;
using HandsFree.App.Unlocking;
using HandsFree.Core.Journal;
using HandsFree.Store.Journaling;
using HandsFree.Store.Keys;

namespace HandsFree.Scenarios.CommandLine;

/// <summary>A home in a folder of its own, gone with the test.</summary>
internal sealed class TemporaryHome : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("handsfree-home-");

    public string Path => folder.FullName;

    public HomeFolder Folder => new(Path, States);

    /// <summary>This device's part, in the same folder only so that it is gone with the test.</summary>
    public string States => At("state");

    public TemporaryHome With(string file, string text)
    {
        File.WriteAllText(At(file), text);
        return this;
    }

    public TemporaryHome WithJournal(params JournalEvent[] events)
    {
        using HomeJournal journal = HomeJournal.Open(Folder, new Unlocker(CommandRun.Quiet, null)).Journal!;
        journal.Events.AppendAll(events);
        return this;
    }

    public TemporaryHome WithJournalBytes(byte[] body)
    {
        using IJournal journal = Journal.Open(Folder.JournalFile, new JournalAccess(States, new Credential.Device(), TimeProvider.System)).Journal!;
        journal.Append(body);
        return this;
    }

    public string At(string file) => System.IO.Path.Combine(Path, file);

    public void Dispose() => folder.Delete(recursive: true);
}
