using HandsFree.Core.Journal;

namespace HandsFree.Core.Dialogue;

/// <summary>The journal could not write: nothing is saved, and it is said so. Another try, or paper.</summary>
internal static class NotSavedState
{
    public static Page Page() => new Page(StateKind.NotSaved)
        .On(Trigger.Stop, "silence, not saved", turn => Always.Stop(turn.Lose()), StateKind.AwaitingRoom)
        .On(Trigger.Goodbye, "not saved, end", turn => Always.Goodbye(turn.Lose()), StateKind.Saving)
        .On(Trigger.NurseNeeded, "say that it can't call", Always.NurseNeeded, StateKind.NotSaved)
        .On(Trigger.Unwell, "call light; ask, then report now, with what was not saved", Unwelling.HearUnsaved, StateKind.NotSaved, StateKind.AwaitingAnswer)
        .On(Trigger.Help, "list what can be said", Always.Help, StateKind.NotSaved)
        .WithJournal()
        .WithTries(StateKind.Ready, StateKind.AwaitingRecheck, StateKind.Handover, StateKind.Ended)
        .WithYesNoAlone()
        .On(Trigger.Yes, "write again", Again, StateKind.Saving)
        .On([Trigger.No, Trigger.Cancel, Trigger.GoBack], "leave it to paper", LoseUnsaved, StateKind.Ready, StateKind.AwaitingRecheck, StateKind.Handover, StateKind.Ended)
        .On([Trigger.NextResident, Trigger.Place, Trigger.Pause], "this one first", Always.AnswerFirst, StateKind.NotSaved);

    public static Turn LoseUnsaved(this Turn turn)
    {
        Turn lost = turn.Lose();
        Turn said = lost.Say(turn.Stage<Stage.NotSaved>().BeforeUndo is null ? "Not saved. Write it on paper." : "Not removed. Write it on paper.");
        return lost.State.Stage is Stage.Ended ? said.Do(new Effect.End()) : said;
    }

    private static Turn Again(Turn turn)
    {
        var stage = turn.Stage<Stage.NotSaved>();
        return (turn with { ToWrite = stage.Events }).Save(stage.Text, stage.After, stage.BeforeUndo);
    }

    // The value is as if it had never been said, what was to be removed stays; the trail of attempts is kept for the next batch.
    private static Turn Lose(this Turn turn)
    {
        var stage = turn.Stage<Stage.NotSaved>();
        HashSet<string> lost = [.. stage.Events.Select(e => e.Id)];
        IEnumerable<JournalEvent> trail = stage.Events.Where(e => e is AttemptDiscarded or LeftOpen or IdentificationFailed or ResidentIdentified);
        Turn kept = turn with { State = turn.State with { Unwritten = turn.State.Unwritten.AddRange(trail) } };
        if (stage.After is Stage.Ended or Stage.Handover)
        {
            return kept.Go(stage.After);
        }

        SavedItem? item = turn.State.Set?.Saved.LastOrDefault(s => lost.Contains(s.Events[0]));
        Turn back = (stage.BeforeUndo ?? item?.Before) is { } before ? kept.With(before) : kept;
        return back.Go(back.State.Set?.Base() ?? new Stage.AwaitingRoom());
    }
}
