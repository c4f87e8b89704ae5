using HandsFree.Core.Handover;
using HandsFree.Core.Meanings;

namespace HandsFree.Core.Dialogue;

/// <summary>The handover's answers inside the round.</summary>
internal static class Handovers
{
    public static Turn Answer(Turn turn) => Answer(turn, turn.Meant<Meaning.Query>());

    public static Turn Answer(Turn turn, Meaning.Query query)
    {
        HandoverCursor cursor = turn.State.Stage is Stage.Handover stage ? stage.Cursor : HandoverCursor.Start;
        HandoverView view = HandoverView.From(turn.State.Journal, turn.Parts.Roster, turn.Parts.Settings.ShiftBegan);
        HandoverAnswer answer = HandoverAnswerer.Answer(view, query, cursor);
        return answer.IsGoodbye ? turn.Ask(new Stage.AwaitingRoom()) : turn.Go(new Stage.Handover(answer.Cursor)).Say(answer.Text);
    }
}
