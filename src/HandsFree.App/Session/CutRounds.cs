using HandsFree.Core.Dialogue;
using HandsFree.Core.Dialogue.Recovery;
using HandsFree.Core.Journal;
using HandsFree.Store.Journaling;

namespace HandsFree.App.Session;

/// <summary>Finds in the journal the round of an aide that was cut off.</summary>
internal static class CutRounds
{
    private const long Step = 512;

    /// <summary>The round, with what it was told; null where there is none. Where what it was told can't be read any more, it is restored from
    /// what was saved, and <paramref name="isLost"/> is true.</summary>
    /// <param name="journal">The journal.</param>
    /// <param name="present">What the present needs of it, oldest first.</param>
    /// <param name="aide">Whose round.</param>
    /// <param name="memory">Opens what was told.</param>
    /// <param name="isLost">Whether a round was cut off that can't go on where it was.</param>
    public static CutRound? Find(EventJournal<JournalEvent> journal, IReadOnlyList<JournalEvent> present, string aide, RoundMemory memory, out bool isLost)
    {
        isLost = false;
        if (CutRound.Find(present, aide) is not { Fingerprint: not null } started)
        {
            return null;
        }

        string session = CutRound.SessionOf(started.Id);
        JournalEvent[] since = [.. Since(journal, started.Id)];
        DialogueEvent?[] told = [.. since.OfType<DialogueTold>().Where(t => t.Round == session).Select(t => Opened(memory, t))];
        isLost = told.Any(t => t is null);
        return isLost ? null : new CutRound(
            started,
            [.. present.TakeWhile(e => e.Id != started.Id)],
            [.. since.Where(e => e is not DialogueTold && e.Id.StartsWith(session + "-", StringComparison.Ordinal))],
            [.. told.OfType<DialogueEvent>()]);
    }

    private static DialogueEvent? Opened(RoundMemory memory, DialogueTold told)
    {
        try
        {
            return memory.Open(told);
        }
        catch (InvalidDataException)
        {
            return null; // told to another version of the program
        }
    }

    // Backwards from the end: a round is at the end of a long journal.
    private static IEnumerable<JournalEvent> Since(EventJournal<JournalEvent> journal, string id)
    {
        for (long back = Step; ; back *= 4)
        {
            long from = Math.Max(1, journal.Count - back + 1);
            JournalEvent[] last = [.. journal.TryReadFrom(from).Select(e => e.Event).OfType<JournalEvent>()];
            int begin = Array.FindIndex(last, e => e.Id == id);
            if (begin >= 0 || from == 1)
            {
                return last.Skip(Math.Max(begin, 0));
            }
        }
    }
}
