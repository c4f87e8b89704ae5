namespace HandsFree.Core.Dialogue;

/// <summary>The grammar of each state: it listens only for what it can use. Yes and no are heard only where something was read back
/// or asked.</summary>
internal static class Listens
{
    public static Listening For(DialogueState state) => state.Stage switch
    {
        Stage.AwaitingRoom s => new(ListeningKind.Identity, AnswerAwaited: !s.Quiet),
        Stage.AwaitingName => new(ListeningKind.YesNo),
        Stage.AwaitingSecondIdentifier => new(ListeningKind.SecondIdentifier),
        Stage.Ready s => new(ListeningKind.Readings, s.Led, AnswerAwaited: false),
        Stage.AwaitingConfirmation s => new(ListeningKind.Confirmation, s.ReadBack.Reading.Value.Sign),
        Stage.AwaitingSayingAgain s => new(ListeningKind.Value, s.ReadBack.Reading.Value.Sign),
        Stage.AwaitingValue s => new(ListeningKind.Value, s.Sign),
        Stage.AwaitingRecheck s => new(ListeningKind.Readings, s.Sign, AnswerAwaited: false),
        Stage.Counting s => new(ListeningKind.Count, s.Sign, AnswerAwaited: false),
        Stage.AwaitingCount s => new(ListeningKind.Count, s.Sign),
        Stage.AwaitingAnswer { Question: Question.TakenJustNow } => new(ListeningKind.NowOrBefore),
        Stage.AwaitingNotTaken or Stage.AwaitingAnswer or Stage.AwaitingUndo or Stage.NotSaved => new(ListeningKind.YesNo),
        Stage.Paused => new(ListeningKind.Commands, AnswerAwaited: false),
        Stage.Locked s => new(s.Spoken ? ListeningKind.SecondIdentifier : ListeningKind.Commands, AnswerAwaited: false),
        Stage.Handover => new(ListeningKind.Handover, AnswerAwaited: false),
        Stage.Saving or Stage.Ended => new(ListeningKind.Nothing, AnswerAwaited: false),
        _ => throw new ArgumentOutOfRangeException(nameof(state), state.Kind, "no grammar for this state"),
    };
}
