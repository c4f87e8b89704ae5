using HandsFree.Core.Dialogue;
using HandsFree.Core.Dialogue.Recovery;

namespace HandsFree.App.Session;

/// <summary>Writes what the round's dialogue is told, and takes up a round that was cut off. Used by the session loop alone.</summary>
internal sealed class KeptRound(SessionParts parts, JournalPen pen)
{
    private RoundMemory? memory = parts.Memory;
    private string aide = "";
    private string session = "";
    private int told;

    /// <summary>Begins.</summary>
    /// <param name="whose">The aide.</param>
    /// <param name="name">The session of a new round.</param>
    /// <returns>The round that was cut off, told again; null for a new one.</returns>
    public ResumedRound? Begin(string whose, string name)
    {
        (aide, session) = (whose, name);
        if (parts.Cut is not { } cut || parts.Machine.Resume(cut) is not { } resumed)
        {
            return null;
        }

        (session, told) = (CutRound.SessionOf(cut.Started.Id), cut.Told.Count);
        return resumed;
    }

    /// <summary>What is still to be done of a round that was cut off: its screen, its timers by the clock, what was not written. What was
    /// written is not written again.</summary>
    public static IEnumerable<Effect> Effects(ResumedRound resumed, DateTimeOffset now) =>
    [
        new Effect.Show(resumed.State.Screen),
        .. resumed.Timers.Select(t => new Effect.StartTimer(t.Key, t.Value > now ? t.Value - now : TimeSpan.Zero)),
        .. resumed.Unanswered.Where(b => !b.IsWritten).Select(b => b.Record),
    ];

    /// <summary>Keeps what happened, before its effects; what a batch comes of is written with the batch.</summary>
    public void Keep(DialogueState before, DialogueEvent happened, DialogueStep step, DateTimeOffset now)
    {
        if (memory is null || ToldEvents.Of(before, happened, step) is not { } kept)
        {
            return;
        }

        try
        {
            pen.Tell(memory.Seal(++told, session, aide, kept, now));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // Without a link the rest is of no use: after a cut the round is restored from what was saved.
            memory = null;
            parts.Watcher.Saw(new SessionNote.NotKept(now, $"after a crash this round goes on with what is saved only ({failure.Message.ReplaceLineEndings(" ")})"));
        }

        if (!step.Effects.Any(e => e is Effect.Record))
        {
            pen.Keep();
        }
    }
}
