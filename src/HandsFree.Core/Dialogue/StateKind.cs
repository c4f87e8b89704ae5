namespace HandsFree.Core.Dialogue;

/// <summary>The states of the dialogue.</summary>
public enum StateKind
{
    /// <summary>No resident: room and bed are awaited.</summary>
    AwaitingRoom,

    /// <summary>The name was said in the ear; a yes after looking is awaited.</summary>
    AwaitingName,

    /// <summary>The second identifier is awaited.</summary>
    AwaitingSecondIdentifier,

    /// <summary>Readings in any order; nothing was asked.</summary>
    Ready,

    /// <summary>A value was read back; its yes is awaited.</summary>
    AwaitingConfirmation,

    /// <summary>A value was read back that must be said again.</summary>
    AwaitingSayingAgain,

    /// <summary>A value is to be said (again): refused, not possible, doubtful, or a guess.</summary>
    AwaitingValue,

    /// <summary>A recheck is to be done.</summary>
    AwaitingRecheck,

    /// <summary>A count runs.</summary>
    Counting,

    /// <summary>A count is over; the number is awaited.</summary>
    AwaitingCount,

    /// <summary>"Not taken" was read back; its yes is awaited.</summary>
    AwaitingNotTaken,

    /// <summary>A question with yes or no was asked.</summary>
    AwaitingAnswer,

    /// <summary>The last saved item was read back; a yes removes it.</summary>
    AwaitingUndo,

    /// <summary>The journal is writing.</summary>
    Saving,

    /// <summary>The journal could not write; another try is offered.</summary>
    NotSaved,

    /// <summary>Paused.</summary>
    Paused,

    /// <summary>Locked: nothing of a resident is shown or said until she has unlocked it.</summary>
    Locked,

    /// <summary>Questions of the handover.</summary>
    Handover,

    /// <summary>Over.</summary>
    Ended,
}
