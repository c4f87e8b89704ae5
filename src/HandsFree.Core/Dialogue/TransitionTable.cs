namespace HandsFree.Core.Dialogue;

/// <summary>The whole dialogue: every state, every kind of event, decided in writing.</summary>
internal static class TransitionTable
{
    public static IReadOnlyDictionary<StateKind, Page> Pages { get; } = new[]
    {
        AwaitingRoomState.Page(),
        AwaitingNameState.Page(),
        AwaitingSecondIdentifierState.Page(),
        ReadyState.Page(),
        AwaitingConfirmationState.Page(),
        AwaitingSayingAgainState.Page(),
        AwaitingValueState.Page(),
        AwaitingRecheckState.Page(),
        CountingState.Page(),
        AwaitingCountState.Page(),
        AwaitingNotTakenState.Page(),
        AwaitingAnswerState.Page(),
        AwaitingUndoState.Page(),
        SavingState.Page(),
        NotSavedState.Page(),
        PausedState.Page(),
        LockedState.Page(),
        HandoverState.Page(),
        EndedState.Page(),
    }.Select(page => page.WithLock().WithResumption()).ToDictionary(p => p.State);

    public static Row Find(StateKind state, Trigger trigger) => Pages[state].Rows[trigger];
}
