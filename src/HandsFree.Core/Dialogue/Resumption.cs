using HandsFree.Core.Journal;

namespace HandsFree.Core.Dialogue;

/// <summary>A round that was cut off goes on. Its state is what it was; identity is asked first, as after every departure (safety 6), then
/// the question that stood is asked again. After a long time what waited is left, as after a long pause.</summary>
internal static class Resumption
{
    private const string GoesOn = "The round goes on.";

    /// <summary>The states in which a resident is in hand.</summary>
    public static StateKind[] Suspendable =>
    [
        StateKind.AwaitingConfirmation, StateKind.AwaitingSayingAgain, StateKind.AwaitingValue, StateKind.Counting, StateKind.AwaitingCount,
        StateKind.AwaitingNotTaken, StateKind.AwaitingAnswer, StateKind.AwaitingUndo, StateKind.NotSaved, StateKind.Paused,
    ];

    /// <summary>Adds the row to a page.</summary>
    public static Page WithResumption(this Page page) => page.State switch
    {
        StateKind.Ended => page.Ignore(Trigger.Resumed),
        StateKind.Saving => page.On(Trigger.Resumed, "the writing goes on", turn => turn, StateKind.Saving),
        StateKind.Locked or StateKind.Handover or StateKind.AwaitingRoom or StateKind.AwaitingName =>
            page.On(Trigger.Resumed, "say so, ask again", Resume, page.State),
        _ => page.On(Trigger.Resumed, "identity first", Resume, page.State, StateKind.AwaitingName, StateKind.AwaitingRoom),
    };

    /// <summary>The resident in hand is hers who was in hand before the round was cut off; nothing else is taken back.</summary>
    public static Turn TakeBack(Turn turn, Suspended suspended)
    {
        Turn back = turn with { State = turn.State with { Set = suspended.Set, Suspended = null } };
        Stage stage = suspended.Stage;
        return stage switch
        {
            Stage.Ready => back.Go(stage).Say("Ready."),
            // Nobody heard the end of a count through which the program was off.
            Stage.Counting counting => CountStart.Announce(back, counting),
            _ => back.Go(stage).Say(Sentence.Join("Ready.", Prompts.For(stage with { Asked = 0 }, turn.Parts, back.State with { Stage = stage }))),
        };
    }

    /// <summary>She is left before she was identified again: what was suspended is in hand, so that it can be left as ever. What could not be
    /// written is tried again with the next batch.</summary>
    public static Turn Unsuspended(this Turn turn)
    {
        if (turn.State.Suspended is not { } suspended)
        {
            return turn;
        }

        DialogueState state = turn.State with { Set = suspended.Set, Stage = suspended.Stage, Suspended = null };
        return turn with
        {
            State = suspended.Stage is Stage.NotSaved unsaved
                ? state with { Stage = unsaved.After, Unwritten = state.Unwritten.AddRange(unsaved.Events) }
                : state,
        };
    }

    private static Turn Resume(Turn turn)
    {
        Turn noted = turn.Write(id => new RoundResumed(id, turn.State.Aide, turn.At));
        Stage stage = turn.State.Stage;
        bool tooLong = turn.At - ((DialogueEvent.Resumed)turn.Event).Since > turn.Parts.Settings.LongestPause;
        return (noted.State, stage) switch
        {
            ({ Set: { } set }, not Stage.NotSaved) when tooLong => noted.Leave("cut off for too long").AskAgain(set.Resident),
            ({ Set: { } set }, _) => Suspend(noted, new Suspended(set, stage), set.Resident),
            (_, Stage.AwaitingSecondIdentifier s) => Suspend(noted, new Suspended(null, s), s.Resident),
            // In the middle of asking for identity again, when it was cut off once more.
            _ => noted.Say(Sentence.Join(GoesOn, Prompts.For(stage with { Asked = 0 }, turn.Parts, turn.State))),
        };
    }

    private static Turn Suspend(Turn turn, Suspended suspended, Residents.Resident resident) =>
        (turn with { State = turn.State with { Set = null, Suspended = turn.State.Suspended ?? suspended } }).AskAgain(resident);

    private static Turn AskAgain(this Turn turn, Residents.Resident resident) => turn.AskName(resident, GoesOn);
}
