using HandsFree.Core.Reports;

namespace HandsFree.Core.Dialogue;

/// <summary>"She fell", "he is dizzy": heard wherever somebody speaks, for help does not wait for a question that is open (safety 15 to
/// 17). The call light is named at once, what waits is left open, a posture test ends, and it is reported now. Where nobody is
/// identified there is nobody to report on.</summary>
internal static class Unwelling
{
    private const string CallLight = "Use the call light now.";

    public static Turn Hear(Turn turn)
    {
        if (turn.State.Set is null)
        {
            return turn.Say(CallLight);
        }

        Turn said = turn.Say(CallLight + " Help the resident sit or lie down.");
        string what = said.Set.Posture == PostureStep.None ? "dizzy or fell" : "dizzy or fell in the posture test";
        Turn left = PostureTest.End(said.Abandon("dizzy or fell").AbandonHeld("dizzy or fell"));
        return left.OpenReport(ReportUrgency.Now, what, "dizzy-or-fell").Save();
    }

    /// <summary>While the journal writes: that goes on.</summary>
    public static Turn HearSaving(Turn turn) => turn.Stage<Stage.Saving>().After is Stage.Ended
        ? turn.Say(CallLight)
        : Hear(turn.Go(turn.Stage<Stage.Saving>().After));

    /// <summary>What could not be written is tried again with the report.</summary>
    public static Turn HearUnsaved(Turn turn)
    {
        var stage = turn.Stage<Stage.NotSaved>();
        Turn kept = turn with { State = turn.State with { Unwritten = turn.State.Unwritten.AddRange(stage.Events), Stage = stage.After } };
        return stage.After is Stage.Ended ? turn.Say(CallLight) : Hear(kept);
    }
}
