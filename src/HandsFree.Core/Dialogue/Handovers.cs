using HandsFree.Core.Handover;
using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;
using HandsFree.Core.Reports;
using HandsFree.Core.Rounds;

namespace HandsFree.Core.Dialogue;

/// <summary>The handover's answers inside the round.</summary>
internal static class Handovers
{
    public static Turn Answer(Turn turn) => Answer(turn, turn.Meant<Meaning.Query>());

    public static Turn Answer(Turn turn, Meaning.Query query)
    {
        HandoverCursor cursor = turn.State.Stage is Stage.Handover stage ? stage.Cursor : HandoverCursor.Start;
        DialogueSettings settings = turn.Parts.Settings;
        HandoverTime time = new(settings.ShiftBegan, settings.Shifts.Here(turn.At)) { Overdue = settings.Overdue };
        HandoverAnswer answer = HandoverAnswerer.Answer(
            new HandoverRecord(turn.State.Journal, turn.Parts.Roster, new RoundPlan(settings.Due), settings.Shifts, time), query, cursor);
        return answer switch
        {
            { IsGoodbye: true } => turn.Ask(new Stage.AwaitingRoom()),
            { NurseTold.Count: > 0 } => answer.NurseTold.Aggregate(turn, Tell).Save(answer.Text, new Stage.Handover(answer.Cursor)),
            _ => turn.Go(new Stage.Handover(answer.Cursor)).Say(answer.Text),
        };
    }

    private static Turn Tell(Turn turn, Report report) => turn.Write(id =>
        new ReportTold(id, turn.State.Aide, turn.At, report.Id, Told.Nurse, null, ToldHow.InPerson, turn.At));
}
