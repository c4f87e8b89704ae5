using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;

namespace HandsFree.Core.Dialogue;

/// <summary>Rows that states have in common.</summary>
internal static class Always
{
    private const string CannotCall = "I cannot call. Use the call light.";

    /// <summary>Commands that work wherever somebody speaks, and the journal's answers.</summary>
    public static Page WithCommands(this Page page) => page
        .On(Trigger.Stop, "silence, leave what waits", Stop, StateKind.AwaitingRoom)
        .On(Trigger.Goodbye, "name what is open, end", Goodbye, StateKind.Saving)
        .On(Trigger.NurseNeeded, "say that it can't call", NurseNeeded, page.State)
        .On(Trigger.Unwell, "call light; ask, then report now", Unwelling.Hear, page.State, StateKind.AwaitingAnswer, StateKind.Saving)
        .On(Trigger.Help, "list what can be said", Help, page.State)
        .WithJournal();

    /// <summary>The journal's answers in a state that does not wait for them.</summary>
    public static Page WithJournal(this Page page) => page
        .On(Trigger.Saved, "take it into the journal", Saved, page.State)
        .On(Trigger.SaveFailed, "keep it for the next batch, say so", KeepForNextBatch, page.State);

    /// <summary>Five outcomes, each with its own words, where an answer was awaited.</summary>
    public static Page WithTries(this Page page, params StateKind[] givenUp) => page
        .On(Trigger.NothingHeard, "ask again, leave open after three", turn => turn.TryAgain("I heard nothing."), [page.State, .. givenUp])
        .On(Trigger.NotAReading, "ask again, leave open after three", turn => turn.NamingRoom().TryAgain("Not understood."), [page.State, .. givenUp])
        .On(Trigger.PartOfAReading, "ask again, leave open after three", turn => turn.NamingRoom().TryAgain("I heard only a part."), [page.State, .. givenUp]);

    public static Turn Stop(Turn turn) => turn.Depart("stopped");

    /// <summary>Falls silent and leaves the resident; nothing is asked any more.</summary>
    public static Turn Depart(this Turn turn, string why)
    {
        Turn silent = turn.Unsuspended().Do(new Effect.Silence());
        if (silent.State.Set is not { } set)
        {
            return silent.Go(new Stage.AwaitingRoom(Quiet: true));
        }

        // Readings after the stop may have been measured before it: the first is asked for that, and identity is asked again.
        Turn left = silent.Leave(why);
        ResidentSet stopped = left.State.Left[set.Resident.Id] with { StoppedAt = turn.At };
        return left with
        {
            State = left.State with
            {
                Stage = new Stage.AwaitingRoom(Quiet: true),
                Left = left.State.Left.SetItem(set.Resident.Id, stopped),
                StoppedAt = set.Resident.Id,
            },
        };
    }

    public static Turn Goodbye(Turn turn)
    {
        Turn left = OpenRechecks.Report(turn.Leave("goodbye"));
        return left.Write(id => new RoundEnded(id, turn.State.Aide, turn.At))
            .Save(Sentence.Join(OpenItems.Of(left), "Goodbye."), new Stage.Ended());
    }

    public static Turn NurseNeeded(Turn turn) => turn.Say(CannotCall);

    public static Turn Help(Turn turn)
    {
        string options = Prompts.Options(turn.State.Listening, turn.Parts.Settings);
        string answer = options.Length > 0 ? options : "Look at the card for what you can say.";
        return turn.Say(turn.Meant<Meaning.Command>().Word == CommandWord.Help ? Sentence.Join(CannotCall, answer) : answer);
    }

    /// <summary>What was typed and is not understood gets an answer; what was spoken and asked for by nothing is chat (safety 4).</summary>
    public static Turn Unknown(Turn turn) => turn.Event is DialogueEvent.NotAReading { Typed: true }
        ? turn.Say("Not understood. Options tells what can be said.")
        : turn;

    /// <summary>Says the state's prompt again.</summary>
    public static Turn Repeat(Turn turn) => turn.Say(Prompts.For(turn.State.Stage with { Asked = 0 }, turn.Parts, turn.State));

    /// <summary>The question in hand comes first.</summary>
    public static Turn AnswerFirst(Turn turn) =>
        turn.Say("First: " + Prompts.For(turn.State.Stage with { Asked = 0 }, turn.Parts, turn.State));

    /// <summary>Leaves what waits and goes on with the resident.</summary>
    public static Turn Cancel(Turn turn)
    {
        Turn left = turn.Abandon("cancelled");
        return left.Go(left.Set.Base()).Say("Cancelled.");
    }

    /// <summary>Leaves the resident.</summary>
    public static Turn NextResident(Turn turn)
    {
        Turn left = turn.LeaveNaming("left for the next resident", out string open);
        return left.Ask(open, new Stage.AwaitingRoom());
    }

    public static Turn Pause(Turn turn) => turn.Ask(new Stage.Paused(turn.At, turn.State.Stage));

    public static Turn Place(Turn turn) => turn.FindResident();

    public static Turn Saved(Turn turn)
    {
        string batch = ((DialogueEvent.Saved)turn.Event).Batch;
        return turn.State.Writing.TryGetValue(batch, out var events)
            ? turn with
            {
                State = turn.State with { Writing = turn.State.Writing.Remove(batch), Journal = turn.State.Journal.AddRange(events) },
            }
            : turn;
    }

    public static Turn KeepForNextBatch(Turn turn)
    {
        string batch = ((DialogueEvent.SaveFailed)turn.Event).Batch;
        return turn.State.Writing.TryGetValue(batch, out var events)
            ? (turn with
            {
                State = turn.State with { Writing = turn.State.Writing.Remove(batch), Unwritten = turn.State.Unwritten.AddRange(events) },
            }).Say("The record does not work. Tell your supervisor.")
            : turn;
    }
}
