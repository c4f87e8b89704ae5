using HandsFree.Core.Journal;

namespace HandsFree.Core.Dialogue;

/// <summary>What the program around the dialogue is to do, in order.</summary>
public abstract record Effect
{
    private Effect()
    {
    }

    /// <summary>Be silent at once: what is playing ends, what waits to be played is dropped.</summary>
    public sealed record Silence : Effect;

    /// <summary>Say in the earpiece, after what is playing already.</summary>
    /// <param name="Text">The words.</param>
    public sealed record Say(string Text) : Effect;

    /// <summary>A tone in the earpiece, after what is playing already.</summary>
    /// <param name="Tone">Which.</param>
    public sealed record Play(Tone Tone) : Effect;

    /// <summary>What the screen shows from now on.</summary>
    /// <param name="Screen">All of it.</param>
    public sealed record Show(ScreenView Screen) : Effect;

    /// <summary>What to listen for once all has been played; always the last effect of a step that has any.</summary>
    /// <param name="For">The grammar.</param>
    public sealed record Listen(Listening For) : Effect;

    /// <summary>Write these events to the journal in one piece, flush, and answer with Saved or SaveFailed of this batch.</summary>
    /// <param name="Batch">A name for the answer.</param>
    /// <param name="Events">One or more, in order.</param>
    public sealed record Record(string Batch, IReadOnlyList<JournalEvent> Events) : Effect;

    /// <summary>Start a timer, or start it anew; it comes back as TimerElapsed.</summary>
    /// <param name="Name">Its name.</param>
    /// <param name="After">More than zero.</param>
    public sealed record StartTimer(string Name, TimeSpan After) : Effect;

    /// <summary>Stop a timer if it runs.</summary>
    /// <param name="Name">Its name.</param>
    public sealed record StopTimer(string Name) : Effect;

    /// <summary>Ask whether these digits unlock the session; answered with Unlocked or UnlockRefused.</summary>
    /// <param name="Digits">What was said.</param>
    public sealed record Unlock(string Digits) : Effect;

    /// <summary>The session is over.</summary>
    public sealed record End : Effect;
}
