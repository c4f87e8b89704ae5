using HandsFree.Core.Meanings;

namespace HandsFree.Core.Dialogue;

/// <summary>Questions of the handover.</summary>
internal static class HandoverState
{
    public static Page Page() => new Page(StateKind.Handover)
        .On(Trigger.Stop, "silence, leave the handover", Always.Stop, StateKind.AwaitingRoom)
        .On(Trigger.NurseNeeded, "say that it can't call", Always.NurseNeeded, StateKind.Handover)
        .On(Trigger.Unwell, "call light", Unwelling.Hear, StateKind.Handover)
        .On(Trigger.Help, "list what can be said", Always.Help, StateKind.Handover)
        .WithJournal()
        .On(Trigger.Query, "answer; told the nurse, said twice, is written", Handovers.Answer, StateKind.Handover, StateKind.AwaitingRoom, StateKind.Saving)
        .On(Trigger.NextOrPrevious, "answer", Move, StateKind.Handover)
        .On(Trigger.Repeat, "answer again", turn => Handovers.Answer(turn, new Meaning.Query(QueryKind.Repeat, null)), StateKind.Handover)
        .On(Trigger.Place, "find the resident, say the name", Always.Place, StateKind.AwaitingName, StateKind.AwaitingRoom)
        .On([Trigger.Goodbye, Trigger.Cancel, Trigger.GoBack], "leave the handover", AwaitingNameState.Back, StateKind.AwaitingRoom)
        .On(Trigger.NotAReading, "typed: say so; chat: nothing", Always.Unknown, StateKind.Handover)
        .Ignore(
            Trigger.AboutRound, Trigger.Reading, Trigger.ValueAlone, Trigger.Yes, Trigger.No, Trigger.Correction, Trigger.CountSaid, Trigger.Qualifier,
            Trigger.StartCount, Trigger.Seconds, Trigger.Uneven, Trigger.NotTaken, Trigger.Hedge, Trigger.Pause, Trigger.Continue,
            Trigger.NextResident, Trigger.Undo, Trigger.BirthDate, Trigger.BandNumber, Trigger.Worried, Trigger.NotPossible,
            Trigger.NothingHeard, Trigger.PartOfAReading, Trigger.TimerElapsed, Trigger.Played);

    private static Turn Move(Turn turn)
    {
        QueryKind kind = turn.Meant<Meaning.Command>().Word == CommandWord.Next ? QueryKind.Next : QueryKind.Previous;
        return Handovers.Answer(turn, new Meaning.Query(kind, null));
    }
}
