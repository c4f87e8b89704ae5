using HandsFree.App.Journals;
using HandsFree.App.Recordings;
using HandsFree.App.Unlocking;
using HandsFree.Core.Journal;
using HandsFree.Store.Devices;
using HandsFree.Store.Journaling;
using HandsFree.Store.Keys;
using HandsFree.Store.Recordings;

namespace HandsFree.App.Homes;

/// <summary>The journal of a home, its events typed.</summary>
internal sealed class HomeJournal : IDisposable
{
    private readonly Journal bytes;
    private readonly JournalViewFile view;
    private readonly HomeViewFile home;
    private readonly Action<string> warn;

    private HomeJournal(Journal bytes, HomeFolder folder, Unlocker unlocker)
    {
        (this.bytes, warn) = (bytes, unlocker.Warn);
        PassedOver = new PassedOver(warn);
        view = new JournalViewFile(bytes, folder.ViewFile, PassedOver);
        home = new HomeViewFile(bytes, folder.HomeViewFile, PassedOver);
        Recordings = bytes.Recordings(folder.AudioFolder);
        ShiftKeys = bytes.ShiftKeys(folder.ShiftKeysFolder);
        Desk = new JournalDesk(this, unlocker.Time);
        Events = new EventJournal<JournalEvent>(bytes, static happened => JournalEventCodec.Encode(happened), Decoded);
    }

    /// <summary>Reads and appends.</summary>
    public EventJournal<JournalEvent> Events { get; }

    /// <summary>Who unlocked it; null where nobody is set up.</summary>
    public Holder? Holder => bytes.Holder;

    /// <summary>Who may unlock it.</summary>
    public JournalPeople People => bytes.People;

    /// <summary>How it ends: the last event's number and the beginning of its hash.</summary>
    /// <exception cref="JournalReadException">The file can't be read.</exception>
    public (long Sequence, string Hash) End => bytes.End;

    /// <summary>The recordings that are kept beside it.</summary>
    public RecordingShelf Recordings { get; }

    /// <summary>The keys under which is sealed what rounds were told.</summary>
    public ShiftKeys ShiftKeys { get; }

    /// <summary>Writes what a command does.</summary>
    public JournalDesk Desk { get; }

    /// <summary>Events that this program can't read; they are named once and left out of what is read.</summary>
    public PassedOver PassedOver { get; }

    /// <summary>The events as they lie in the file.</summary>
    public IEnumerable<JournalEntry> Entries => bytes.ReadFrom(1);

    /// <summary>All events, oldest first.</summary>
    /// <exception cref="JournalReadException">The file can't be read.</exception>
    public IReadOnlyList<JournalEvent> All() => [.. From(1).Select(e => e.Event)];

    /// <summary>The events from a number on, with their numbers.</summary>
    /// <exception cref="JournalReadException">The file can't be read.</exception>
    public IEnumerable<(long Sequence, JournalEvent Event)> From(long sequence) => PassedOver.Readable(bytes.ReadFrom(sequence, PassedOver.Try));

    /// <summary>The id, 32 hex digits.</summary>
    public string Id => bytes.Id;

    /// <summary>The events that a round, the handover and the rules can still ask for, oldest first.</summary>
    /// <exception cref="JournalReadException">The file can't be read.</exception>
    public IReadOnlyList<JournalEvent> Present() => view.Present();

    /// <summary>Roster, settings and rules as the journal has them.</summary>
    /// <exception cref="JournalReadException">The file can't be read.</exception>
    public HomeKept HomeKept() => home.Read();

    /// <summary>The events that were entered from a moment on, oldest first, found without reading those before. Where the clock was set back
    /// by less than a day, none of them is missing.</summary>
    /// <exception cref="JournalReadException">The file can't be read.</exception>
    public IEnumerable<JournalEvent> Since(DateTimeOffset moment)
    {
        DateTimeOffset from = moment.AddDays(-1);
        (long least, long most) = (1, Events.Count + 1);
        while (least < most)
        {
            long middle = (least + most) / 2;
            bool before = PassedOver.Readable(bytes.ReadFrom(middle).Select(PassedOver.Try)).FirstOrDefault().Event is { } found && found.At < from;
            (least, most) = before ? (middle + 1, most) : (least, middle);
        }

        return From(least).Select(e => e.Event).Where(happened => happened.At >= moment);
    }

    /// <summary>The event of an entry; <see cref="NotBelieved"/> where who wrote it could not have.</summary>
    /// <exception cref="InvalidDataException">It can't be read; says which and why.</exception>
    public static JournalEvent Decoded(JournalEntry entry)
    {
        try
        {
            JournalEvent happened = JournalEventCodec.Decode(entry.Body.Span);
            string? wrong = entry.Writer is { } writer
                ? Authority.WhyNot(happened, (writer.Holder.Person, writer.Holder.Role), writer.HasSigned)
                : null;
            return wrong is null ? happened : new NotBelieved(happened.Id, happened.Person, happened.At, happened.GetType().Name, wrong);
        }
        catch (InvalidDataException wrong)
        {
            throw new InvalidDataException($"event {entry.Sequence}: {wrong.Message.ReplaceLineEndings(" ")}", wrong);
        }
    }

    /// <summary>Opens the journal of a home, and makes folder and journal where they are not there. Recordings whose days are over are deleted.</summary>
    /// <param name="folder">The home's.</param>
    /// <param name="unlocker">Gives person and PIN where people are set up.</param>
    /// <param name="with">What unlocks instead, or null.</param>
    /// <param name="forSession">For a session, which says between two waits that it waits.</param>
    /// <param name="accepts">Takes the journal as it lies there, for a supervisor.</param>
    /// <returns>The journal, or one line that says what is wrong and what to do.</returns>
    public static (HomeJournal? Journal, string? Error) Open(HomeFolder folder, Unlocker unlocker, Credential? with = null, bool forSession = false, bool accepts = false)
    {
        if (folder.HasLostJournal && !Journal.WasHere(folder.JournalFile, folder.States))
        {
            return (null, $"{folder.JournalFile}: a journal was here and is gone, with what this device remembered of it; put it back (is its disk there? does HANDSFREE_STATE name the right folder?), or bring a backup in with \"handsfree journal restore\"");
        }

        try
        {
            HomeFolder.Make(folder.Path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return (null, $"{folder.Path}: the home's folder can't be made ({e.Message.ReplaceLineEndings(" ")}); name another with --home");
        }

        (Journal? opened, string? error) = forSession
            ? unlocker.Open(folder.JournalFile, folder.States, with, new JournalOptions().BusySeconds)
            : unlocker.Open(folder.JournalFile, folder.States, with, accepts: accepts);
        if (opened is null)
        {
            return (null, error);
        }

        HomeJournal journal = new(opened, folder, unlocker);
        try
        {
            journal.WriteFailedOpenings();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            unlocker.Warn($"openings that failed are not in the journal yet ({e.Message.ReplaceLineEndings(" ")}); they are written the next time");
        }

        try
        {
            journal.ShiftKeys.DestroyOverdue(unlocker.Time.GetUtcNow());
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            unlocker.Warn($"what earlier rounds were told can still be read, its keys can't be destroyed ({e.Message.ReplaceLineEndings(" ")}); allow writing to {folder.ShiftKeysFolder}");
        }

        try
        {
            unlocker.Emergency(journal);
        }
        catch (Exception e) when (e is JournalReadException or JournalWriteException or InvalidDataException)
        {
            journal.Dispose();
            return (null, e.Message);
        }

        foreach (string unpurged in RecordingPurge.Overdue(journal, unlocker.Time))
        {
            unlocker.Warn(unpurged);
        }

        return (journal, null);
    }

    private void WriteFailedOpenings()
    {
        if (Holder is { } holder)
        {
            People.TakeFailedOpenings(failed =>
            {
                foreach (FailedOpening each in failed)
                {
                    Desk.Write((id, at) => new OpeningFailed(id, holder.Person, at, each.At, each.Who, each.What));
                }
            });
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        bytes.Dispose();
        if (bytes.HeadNotKept is { } why)
        {
            warn($"all is saved, but this device could not note where the journal ends ({why}); free some space for its state folder");
        }
    }
}
