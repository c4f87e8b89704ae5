using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;

namespace HandsFree.App.Session;

/// <summary>What a session shows to who looks on.</summary>
/// <param name="At">When.</param>
internal abstract record SessionNote(DateTimeOffset At)
{
    /// <summary>The program says something.</summary>
    /// <param name="At">When it was decided.</param>
    /// <param name="Text">The words.</param>
    /// <param name="WhyUnheard">Null, or why the voice could not speak them.</param>
    public sealed record Said(DateTimeOffset At, string Text, string? WhyUnheard) : SessionNote(At);

    /// <summary>A tone.</summary>
    public sealed record Sounded(DateTimeOffset At, Tone Tone) : SessionNote(At);

    /// <summary>Speech was over, and this was made of it.</summary>
    /// <param name="At">When it was told.</param>
    /// <param name="Event">What the dialogue was told; null where there was nothing to tell it.</param>
    public sealed record Heard(DateTimeOffset At, DialogueEvent? Event) : SessionNote(At);

    /// <summary>Events are in the journal and flushed.</summary>
    /// <param name="At">When.</param>
    /// <param name="FirstSequence">Sequence number of the first one; the others follow.</param>
    /// <param name="Events">One or more.</param>
    public sealed record Kept(DateTimeOffset At, long FirstSequence, IReadOnlyList<JournalEvent> Events) : SessionNote(At)
    {
        /// <summary>What other programs wrote since the session wrote last, such as an acknowledgement by the nurse.</summary>
        public IReadOnlyList<JournalEvent> Others { get; init; } = [];

        /// <summary>A line for each event of another program that can't be read.</summary>
        public IReadOnlyList<string> Unreadable { get; init; } = [];
    }

    /// <summary>Events of other programs can't be read; they are passed over.</summary>
    /// <param name="At">When.</param>
    /// <param name="Lines">One for each: which, and why.</param>
    public sealed record NotRead(DateTimeOffset At, IReadOnlyList<string> Lines) : SessionNote(At);

    /// <summary>The journal could not write.</summary>
    public sealed record NotKept(DateTimeOffset At, string Why) : SessionNote(At);

    /// <summary>The screen changes.</summary>
    public sealed record Shown(DateTimeOffset At, ScreenView Screen) : SessionNote(At);

    /// <summary>From now on this is listened for.</summary>
    public sealed record Listens(DateTimeOffset At, Listening For) : SessionNote(At);

    /// <summary>All that was said has been played.</summary>
    public sealed record Quiet(DateTimeOffset At) : SessionNote(At);

    /// <summary>The microphone is heard or not.</summary>
    /// <param name="At">When.</param>
    /// <param name="State">How it stands.</param>
    /// <param name="Why">Where it is gone, why and what to do.</param>
    public sealed record Microphone(DateTimeOffset At, MicrophoneState State, string? Why) : SessionNote(At);

    /// <summary>The loudspeaker went, or came back.</summary>
    /// <param name="At">When.</param>
    /// <param name="WhySilent">Null where it works.</param>
    public sealed record Loudspeaker(DateTimeOffset At, string? WhySilent) : SessionNote(At);

    /// <summary>A clock of the dialogue runs, or runs no more.</summary>
    /// <param name="At">When.</param>
    /// <param name="Name">The dialogue's name of it.</param>
    /// <param name="Ends">When it runs out; null where it has, or was stopped.</param>
    public sealed record Clock(DateTimeOffset At, string Name, DateTimeOffset? Ends) : SessionNote(At);
}
