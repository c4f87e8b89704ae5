using HandsFree.Core.Journal;
using HandsFree.Store.Journaling;

namespace HandsFree.App.Homes;

/// <summary>The journal of a home, its events typed.</summary>
internal sealed class HomeJournal : IDisposable
{
    private readonly IJournal bytes;

    private HomeJournal(IJournal bytes)
    {
        this.bytes = bytes;
        Events = new EventJournal<JournalEvent>(bytes, static happened => JournalEventCodec.Encode(happened), static body => JournalEventCodec.Decode(body.Span));
    }

    /// <summary>Reads and appends.</summary>
    public EventJournal<JournalEvent> Events { get; }

    /// <summary>The events as they lie in the file.</summary>
    public IEnumerable<JournalEntry> Entries => bytes.ReadFrom(1);

    /// <summary>All events, oldest first.</summary>
    /// <exception cref="JournalReadException">The file can't be read.</exception>
    /// <exception cref="InvalidDataException">An event can't be read; says which.</exception>
    public IReadOnlyList<JournalEvent> All()
    {
        List<JournalEvent> all = [];
        foreach (JournalEntry entry in Entries)
        {
            all.Add(Decoded(entry));
        }

        return all;
    }

    /// <summary>The event of an entry.</summary>
    /// <exception cref="InvalidDataException">It can't be read; says which and why.</exception>
    public static JournalEvent Decoded(JournalEntry entry)
    {
        try
        {
            return JournalEventCodec.Decode(entry.Body.Span);
        }
        catch (InvalidDataException wrong)
        {
            throw new InvalidDataException($"event {entry.Sequence}: {wrong.Message.ReplaceLineEndings(" ")}", wrong);
        }
    }

    /// <summary>Opens the journal of a home, and makes folder and journal where they are not there.</summary>
    /// <param name="folder">The home's.</param>
    /// <returns>The journal, or one line that says what is wrong and what to do.</returns>
    public static (HomeJournal? Journal, string? Error) Open(HomeFolder folder)
    {
        try
        {
            HomeFolder.Make(folder.Path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return (null, $"{folder.Path}: the home's folder can't be made ({e.Message.ReplaceLineEndings(" ")}); name another with --home");
        }

        return Journal.Open(folder.JournalFile).TryGet(out IJournal? journal, out JournalError? error)
            ? (new HomeJournal(journal), null)
            : (null, error.Message);
    }

    /// <inheritdoc/>
    public void Dispose() => bytes.Dispose();
}
