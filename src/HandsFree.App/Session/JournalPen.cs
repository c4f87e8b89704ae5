using HandsFree.App.Journals;
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

    private readonly HashSet<long> own = [];
    private readonly List<JournalEvent> waiting = [];
    private long end = journal.Count;

    /// <summary>Writes; what who looks on is told, and the dialogue's answer.</summary>
    public (SessionNote Note, DialogueEvent Answer) Write(Effect.Record record, DateTimeOffset at)
    {
        for (int turn = 1; ; turn++)
        {
            try
            {
                long last = journal.AppendAll(waiting.Concat(record.Events));
                long first = last - record.Events.Count + 1;
                Own(last - record.Events.Count);
                return (Look(new SessionNote.Kept(at, first, record.Events), last), new DialogueEvent.Saved(at, record.Batch, last));
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

    /// <summary>What the dialogue was told, for the next batch, or for <see cref="Keep"/>.</summary>
    public void Tell(DialogueTold told) => waiting.Add(told);

    /// <summary>Writes what the dialogue was told, without waiting for the disk: nothing is announced of it. Where that fails, it goes with the
    /// next batch, which says whether the journal works.</summary>
    /// <returns>Whether it is written.</returns>
    public bool Keep()
    {
        if (waiting.Count == 0)
        {
            return true;
        }

        try
        {
            Own(journal.AppendLoose(waiting));
            return true;
        }
        catch (JournalWriteException)
        {
            return false;
        }
    }

    private void Own(long last)
    {
        own.UnionWith(Enumerable.Range(0, waiting.Count).Select(i => last - i));
        waiting.Clear();
    }

    // The batch is saved, whatever is found here. What can't be read now is looked for with the next batch.
    private SessionNote.Kept Look(SessionNote.Kept kept, long last)
    {
        own.UnionWith(Enumerable.Range(0, kept.Events.Count).Select(i => kept.FirstSequence + i));
        try
        {
            var others = journal.TryReadFrom(end + 1).TakeWhile(e => e.Sequence <= last).Where(e => !own.Contains(e.Sequence)).ToArray();
            end = last;
            own.Clear();
            return kept with
            {
                Others = [.. others.Select(e => e.Event).OfType<JournalEvent>().Where(e => e is not DialogueTold)],
                Unreadable = [.. others.Where(e => e.Event is null).Select(e => PassedOver.Line(e.Why!))],
            };
        }
        catch (JournalReadException failure)
        {
            return kept with { Unreadable = [$"what other programs wrote can't be read now: {failure.Message}"] };
        }
    }
}
