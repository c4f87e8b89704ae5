using HandsFree.Core.Meanings;

namespace HandsFree.Core.Dialogue;

/// <summary>"Not taken" was read back with its reason; yes saves it.</summary>
internal static class AwaitingNotTakenState
{
    public static Page Page() => new Page(StateKind.AwaitingNotTaken)
        .WithCommands()
        .WithTries(StateKind.Ready, StateKind.AwaitingRecheck)
        .WithYesNoAlone()
        .WithLeaving()
        .On(Trigger.Yes, "save; asleep: ask whether the voice woke", Yes, StateKind.Saving, StateKind.AwaitingAnswer)
        .On([Trigger.No, Trigger.Cancel, Trigger.GoBack], "drop it", Always.Cancel, StateKind.Ready, StateKind.AwaitingRecheck);

    private static Turn Yes(Turn turn)
    {
        var stage = turn.Stage<Stage.AwaitingNotTaken>();
        return stage.Reason == NotTakenReason.Asleep
            ? turn.Ask(new Stage.AwaitingAnswer(Question.WokeToVoice, "Did the resident wake to your voice?") { Asleep = stage })
            : turn.RecordNotTaken(stage, Sleeping.NotAsked).Save();
    }
}
