using System.Collections.Immutable;
using HandsFree.Core.Handover;
using HandsFree.Core.Hearings;
using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Dialogue;

/// <summary>Where the dialogue stands, with what that state alone has to remember.</summary>
internal abstract record Stage(StateKind Kind)
{
    /// <summary>How often this state has asked without an answer that it could use: 0, 1, 2. Chooses the prompt.</summary>
    public int Asked { get; init; }

    /// <summary>Failed tries at this value or question, through all the states it went through; the third leaves it open.</summary>
    public int Tries { get; init; }

    /// <summary>What the answers that were not sure may have been, all together: the next one is decided with them.</summary>
    public ImmutableList<Possible<Meaning>> Doubted { get; init; } = [];

    /// <summary>Both ears are in the stethoscope: nothing is said until the value is spoken.</summary>
    public bool Silent { get; init; }

    /// <param name="Quiet">Nothing was asked: after a stop, and after three tries.</param>
    public sealed record AwaitingRoom(bool Quiet = false) : Stage(StateKind.AwaitingRoom)
    {
        /// <summary>The room of which the bed is still to be said; null where the room is.</summary>
        public int? Room { get; init; }
    }

    public sealed record AwaitingName(Resident Resident) : Stage(StateKind.AwaitingName)
    {
        /// <summary>The birthday that was said with the place, or null; it counts once the name is agreed.</summary>
        public Meanings.Meaning.BirthDate? Born { get; init; }

        /// <summary>Said before the name: away, moved here lately; or empty.</summary>
        public string Note { get; init; } = "";
    }

    public sealed record AwaitingSecondIdentifier(Resident Resident) : Stage(StateKind.AwaitingSecondIdentifier);

    public sealed record Ready() : Stage(StateKind.Ready)
    {
        /// <summary>The reading that was named to the silent aide, in the ear: its bare number is enough.</summary>
        public VitalSign? Led { get; init; }
    }

    /// <param name="ReadBack">What was read back.</param>
    /// <param name="Amends">The id of the reading that it will replace, or null.</param>
    public sealed record AwaitingConfirmation(ReadBack ReadBack, string? Amends) : Stage(StateKind.AwaitingConfirmation)
    {
        /// <summary>It was said again and that did not confirm it: the prompt asks for the yes in words.</summary>
        public bool SaysYesOrNo { get; init; }
    }

    /// <inheritdoc cref="AwaitingConfirmation"/>
    public sealed record AwaitingSayingAgain(ReadBack ReadBack, string? Amends) : Stage(StateKind.AwaitingSayingAgain)
    {
        /// <summary>All hearings of the value so far; empty where it was typed.</summary>
        public ImmutableList<HeardValue> Hearings { get; init; } = [];
    }

    /// <param name="Sign">What is to be said.</param>
    /// <param name="How">What was said already about the way it was taken.</param>
    /// <param name="Why">Why it is asked.</param>
    /// <param name="First">The doubtful first saying, or null.</param>
    /// <param name="Amends">The id of the reading that it will replace, or null.</param>
    public sealed record AwaitingValue(VitalSign Sign, Circumstances How, WhyAsked Why, Understood? First, string? Amends)
        : Stage(StateKind.AwaitingValue)
    {
        /// <summary>The doubtful hearings of the value so far.</summary>
        public ImmutableList<HeardValue> Hearings { get; init; } = [];
    }

    public sealed record AwaitingRecheck(VitalSign Sign, string Instruction) : Stage(StateKind.AwaitingRecheck);

    /// <param name="Sign">Pulse or respirations.</param>
    /// <param name="Seconds">30 or 60.</param>
    /// <param name="Begun">The tone has been played.</param>
    public sealed record Counting(VitalSign Sign, int Seconds, bool Begun) : Stage(StateKind.Counting)
    {
        /// <summary>The pulse was felt as uneven.</summary>
        public bool Uneven { get; init; }
    }

    /// <inheritdoc cref="Counting"/>
    public sealed record AwaitingCount(VitalSign Sign, int Seconds, bool Uneven) : Stage(StateKind.AwaitingCount);

    public sealed record AwaitingNotTaken(VitalSign? Sign, NotTakenReason Reason, Heard Heard, string ReadBack)
        : Stage(StateKind.AwaitingNotTaken);

    /// <param name="Question">Which question.</param>
    /// <param name="Text">Its words.</param>
    public sealed record AwaitingAnswer(Question Question, string Text) : Stage(StateKind.AwaitingAnswer)
    {
        /// <summary>The reading that waits for "taken just now?".</summary>
        public Understood? Understood { get; init; }

        /// <summary>How it was said.</summary>
        public DialogueEvent.Utterance? Said { get; init; }

        /// <summary>The confirmed reading that waits for a symptom.</summary>
        public Confirmed? Confirmed { get; init; }

        /// <summary>The symptoms that are asked for; where it is more than one, a yes leads to one question for each.</summary>
        public ImmutableList<string> Symptoms { get; init; } = [];

        /// <summary>Symptoms that are asked for after this one.</summary>
        public ImmutableList<string> Next { get; init; } = [];

        /// <summary>Symptoms that were answered with yes.</summary>
        public ImmutableHashSet<string> Has { get; init; } = [];

        /// <summary>The id of the reading that it will replace, or null.</summary>
        public string? Amends { get; init; }

        /// <summary>The confirmed "asleep" that waits for "woke to the voice?".</summary>
        public AwaitingNotTaken? Asleep { get; init; }

        /// <summary>"Dizzy", "fell" or "chest pain" that waits for its yes.</summary>
        public Unwell? Unwell { get; init; }
    }

    public sealed record AwaitingUndo(SavedItem Item) : Stage(StateKind.AwaitingUndo);

    /// <param name="Batch">The batch that is awaited.</param>
    /// <param name="Events">Its events, for another try.</param>
    /// <param name="Text">What is said once it is saved.</param>
    /// <param name="After">Where it goes on.</param>
    public sealed record Saving(string Batch, ImmutableList<JournalEvent> Events, string Text, Stage After) : Stage(StateKind.Saving)
    {
        /// <summary>The set as it was before an undo, to which it goes back where that can't be written; null where nothing is undone.</summary>
        public ResidentSet? BeforeUndo { get; init; }
    }

    /// <inheritdoc cref="Saving"/>
    public sealed record NotSaved(ImmutableList<JournalEvent> Events, string Text, Stage After) : Stage(StateKind.NotSaved)
    {
        /// <inheritdoc cref="Saving.BeforeUndo"/>
        public ResidentSet? BeforeUndo { get; init; }
    }

    public sealed record Paused(DateTimeOffset Since, Stage Return) : Stage(StateKind.Paused);

    /// <param name="Spoken">The digits of her choice unlock too.</param>
    public sealed record Locked(bool Spoken) : Stage(StateKind.Locked)
    {
        /// <summary>What was wrong with the last try, for the screen; or empty.</summary>
        public string Refused { get; init; } = "";
    }

    public sealed record Handover(HandoverCursor Cursor) : Stage(StateKind.Handover);

    public sealed record Ended() : Stage(StateKind.Ended);
}
