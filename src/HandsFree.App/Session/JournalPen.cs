using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Store.Journaling;

namespace HandsFree.App.Session;

/// <summary>Writes a batch in one piece. The answer comes after the flush, or says that nothing was written.</summary>
internal sealed class JournalPen(EventJournal<JournalEvent> journal)
{
    /// <summary>Writes; what who looks on is told, and the dialogue's answer.</summary>
    public (SessionNote Note, DialogueEvent Answer) Write(Effect.Record record, DateTimeOffset at)
    {
        try
        {
            long last = journal.AppendAll(record.Events);
            return (
                new SessionNote.Kept(at, last - record.Events.Count + 1, record.Events),
                new DialogueEvent.Saved(at, record.Batch, last));
        }
        catch (JournalWriteException failure)
        {
            return (new SessionNote.NotKept(at, failure.Message), new DialogueEvent.SaveFailed(at, record.Batch, failure.Message));
        }
    }
}
