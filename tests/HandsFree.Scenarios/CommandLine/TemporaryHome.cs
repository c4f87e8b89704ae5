using HandsFree.App.Homes;
using HandsFree.Core.Journal;
using HandsFree.Store.Journaling;

namespace HandsFree.Scenarios.CommandLine;

/// <summary>A home in a folder of its own, gone with the test.</summary>
internal sealed class TemporaryHome : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("handsfree-home-");

    public string Path => folder.FullName;

    public HomeFolder Folder => new(Path);

    public TemporaryHome With(string file, string text)
    {
        File.WriteAllText(At(file), text);
        return this;
    }

    public TemporaryHome WithJournal(params JournalEvent[] events)
    {
        using HomeJournal journal = HomeJournal.Open(Folder).Journal!;
        journal.Events.AppendAll(events);
        return this;
    }

    public TemporaryHome WithJournalBytes(byte[] body)
    {
        using IJournal journal = Journal.Open(Folder.JournalFile).Journal!;
        journal.Append(body);
        return this;
    }

    public string At(string file) => System.IO.Path.Combine(Path, file);

    public void Dispose() => folder.Delete(recursive: true);
}
