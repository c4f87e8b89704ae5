using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Store.Journaling;

namespace HandsFree.App.Session;

/// <summary>Writes a batch in one piece. The answer comes after the flush, or says that nothing was written.</summary>
/// <param name="journal">The journal.</param>
/// <param name="waits">Is told, once a batch, that another program has the journal for longer than one waiting time.</param>
internal sealed class JournalPen(EventJournal<JournalEvent> journal, Action waits)
{
    /// <summary>How many waiting times of the journal a batch waits for its turn: a minute with the program's 5 seconds.</summary>
    private const int Turns = 12;

    private long end = journal.Count;

    /// <summary>Writes; what who looks on is told, and the dialogue's answer.</summary>
    public (SessionNote Note, DialogueEvent Answer) Write(Effect.Record record, DateTimeOffset at)
    {
        for (int turn = 1; ; turn++)
        {
            try
            {
                long last = journal.AppendAll(record.Events);
                long first = last - record.Events.Count + 1;
                JournalEvent[] others = [.. journal.ReadFrom(end + 1).TakeWhile(e => e.Sequence < first).Select(e => e.Event)];
                end = last;
                return (new SessionNote.Kept(at, first, record.Events) { Others = others }, new DialogueEvent.Saved(at, record.Batch, last));
            }
            catch (JournalWriteException failure) when (failure.Problem == JournalProblem.Locked && turn < Turns)
            {
                if (turn == 1)
                {
                    waits();
                }
            }
            catch (JournalWriteException failure)
            {
                return (new SessionNote.NotKept(at, failure.Message), new DialogueEvent.SaveFailed(at, record.Batch, failure.Message));
            }
        }
    }
}
