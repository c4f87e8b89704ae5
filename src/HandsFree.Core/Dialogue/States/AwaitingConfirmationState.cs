using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Dialogue;

/// <summary>A value was read back. Yes saves it, no discards it, "no, eighty-two" replaces it, and what replaces it is read back again
/// and needs its own yes.</summary>
internal static class AwaitingConfirmationState
{
    public static Page Page() => new Page(StateKind.AwaitingConfirmation)
        .WithCommands()
        .WithPending()
        .On(Trigger.Yes, "confirm and save", Yes, StateKind.Saving, StateKind.AwaitingAnswer, StateKind.AwaitingConfirmation, StateKind.Ready, StateKind.AwaitingRecheck);

    private static Turn Yes(Turn turn)
    {
        var stage = turn.Stage<Stage.AwaitingConfirmation>();
        if (turn.IsTooQuiet(stage.ReadBack.Understood.Heard))
        {
            return turn.TryAgain("Was that you?");
        }

        Confirmed confirmed = stage.ReadBack.ByYes(turn.Heard, turn.Attribute(stage.ReadBack.Understood, stage.Amends));
        return turn.RecordOrAsk(confirmed, stage.Amends);
    }
}
