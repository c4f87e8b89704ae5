using HandsFree.Core.Quantities;
using HandsFree.Core.Rounds;

namespace HandsFree.Core.Dialogue;

/// <summary>What the last saved item of a set says: nothing is open, and who is next.</summary>
internal static class SetDone
{
    /// <summary>The words; empty where something is open still, or nothing was before.</summary>
    public static string Words(Turn turn)
    {
        ResidentSet set = turn.Set;
        if (set is not { Waiting.IsEmpty: true, Held.IsEmpty: true, Posture: PostureStep.None, Saved: [.., var last] } || turn.StillDue().Count > 0)
        {
            return "";
        }

        IReadOnlyList<VitalSign> due = DueList.Of(set.Resident, turn.Parts.Settings.Due, turn.State.Journal, turn.At);
        return DueList.Open(due, last.Before.IsSettled).Count == 0 ? "" : Sentence.Join("Nothing open.", RoundOrderTexts.NextOne(turn));
    }
}
