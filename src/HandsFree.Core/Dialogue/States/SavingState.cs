namespace HandsFree.Core.Dialogue;

/// <summary>The journal is writing. "Saved" is said only once it has been flushed.</summary>
internal static class SavingState
{
    public static Page Page() => new Page(StateKind.Saving)
        .On(
            Trigger.Saved,
            "say so, go on",
            Saved,
            StateKind.Ready,
            StateKind.AwaitingRecheck,
            StateKind.Ended,
            StateKind.Handover,
            StateKind.Saving)
        .On(Trigger.SaveFailed, "say so, offer another try", Failed, StateKind.NotSaved, StateKind.Saving)
        .On(Trigger.Stop, "silence; the writing goes on", Stop, StateKind.AwaitingRoom, StateKind.Saving)
        .On(Trigger.NurseNeeded, "say that it can't call", Always.NurseNeeded, StateKind.Saving)
        .On(Trigger.Unwell, "call light; ask, then report now", Unwelling.HearSaving, StateKind.Saving, StateKind.AwaitingAnswer)
        .Ignore([.. Enum.GetValues<Trigger>().Except([Trigger.Saved, Trigger.SaveFailed, Trigger.Stop, Trigger.NurseNeeded, Trigger.Unwell, Trigger.Resumed])]);

    private static Turn Saved(Turn turn)
    {
        var stage = turn.Stage<Stage.Saving>();
        Turn kept = Always.Saved(turn);
        if (((DialogueEvent.Saved)turn.Event).Batch != stage.Batch)
        {
            return kept;
        }

        Turn said = Tell(kept.Go(stage.After), stage);
        return stage.After is Stage.Ended ? said.Do(new Effect.End()) : said;
    }

    // The word is on the screen; it is spoken where more is to be said (the tone alone says less, and sooner).
    private static Turn Tell(Turn turn, Stage.Saving stage)
    {
        Turn told = stage.Text == Recorded.Saved ? turn.Do(new Effect.Play(Tone.Saved)) : turn.Say(stage.Text);
        return told with { State = told.State with { Notice = "saved", LastSaid = told.State.LastSaid } };
    }

    private static Turn Failed(Turn turn)
    {
        var stage = turn.Stage<Stage.Saving>();
        string batch = ((DialogueEvent.SaveFailed)turn.Event).Batch;
        if (batch != stage.Batch)
        {
            return Always.KeepForNextBatch(turn);
        }

        Turn gone = turn with { State = turn.State with { Writing = turn.State.Writing.Remove(batch) } };
        return gone.Do(new Effect.Play(Tone.NotSaved)).Ask(new Stage.NotSaved(stage.Events, stage.Text, stage.After) { BeforeUndo = stage.BeforeUndo });
    }

    private static Turn Stop(Turn turn)
    {
        var stage = turn.Stage<Stage.Saving>();
        return stage.After is Stage.Ended ? turn.Do(new Effect.Silence()) : Always.Stop(turn.Go(stage.After));
    }
}
