using HandsFree.Core.Meanings;
namespace HandsFree.Core.Dialogue;

/// <summary>No resident: room and bed are awaited. After a stop and after three tries nothing is asked any more.</summary>
internal static class AwaitingRoomState
{
    public static Page Page() => new Page(StateKind.AwaitingRoom)
        .WithCommands()
        .On(Trigger.Place, "find the resident, say the name", Always.Place, StateKind.AwaitingName, StateKind.AwaitingRoom)
        .On(Trigger.BedAlone, "of the room that was named: find the resident", Bed, StateKind.AwaitingName, StateKind.AwaitingRoom)
        .On(Trigger.Continue, "the resident of the stop again", Continue, StateKind.AwaitingName, StateKind.AwaitingRoom)
        .On(Trigger.Query, "answer", Handovers.Answer, StateKind.Handover, StateKind.AwaitingRoom)
        .On([Trigger.Repeat, Trigger.GoBack, Trigger.Cancel], "say the prompt", Always.Repeat, StateKind.AwaitingRoom)
        .On([Trigger.NothingHeard, Trigger.NotAReading, Trigger.PartOfAReading], "ask again, three times", Ask, StateKind.AwaitingRoom)
        .On(
            [
                Trigger.Reading, Trigger.BirthDate, Trigger.BandNumber, Trigger.Worried, Trigger.NotTaken, Trigger.Undo, Trigger.StartCount,
                Trigger.NotPossible,
            ],
            "room and bed first",
            RoomFirst,
            StateKind.AwaitingRoom)
        .On(Trigger.AboutRound, "machine or by hand; who is next", RoundWords.Hear, StateKind.AwaitingRoom)
        .Ignore(
            Trigger.ValueAlone, Trigger.Yes, Trigger.No, Trigger.Correction, Trigger.CountSaid, Trigger.Qualifier, Trigger.Seconds,
            Trigger.Uneven, Trigger.Hedge, Trigger.Pause, Trigger.NextResident, Trigger.NextOrPrevious, Trigger.TimerElapsed, Trigger.Played);

    private static Turn Bed(Turn turn)
    {
        string bed = turn.Meant<Meaning.BedAlone>().Bed;
        return turn.Stage<Stage.AwaitingRoom>().Room is { } room
            ? turn.FindResident(new Meaning.Place(room, bed))
            : turn.Say($"Bed {bed.ToUpperInvariant()} of which room?");
    }

    private static Turn Ask(Turn turn)
    {
        if (turn.Stage<Stage.AwaitingRoom>().Quiet)
        {
            if (turn.Event is DialogueEvent.NotAReading { Typed: true })
            {
                return Always.Unknown(turn);
            }

            return turn;
        }

        return turn.TryAgain(turn.Event switch
        {
            DialogueEvent.NothingHeard => "I heard nothing.",
            DialogueEvent.PartOfAReading => "I heard only a part.",
            _ => "Not understood.",
        });
    }

    private static Turn RoomFirst(Turn turn) => turn.Say("First the room and the bed.");

    private static Turn Continue(Turn turn) =>
        turn.State.StoppedAt is { } id && turn.Parts.Roster.ById(id) is { } resident ? turn.AskName(resident) : Always.Repeat(turn);
}
