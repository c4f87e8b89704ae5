using HandsFree.Core.Quantities;
using HandsFree.Core.Rounds;

namespace HandsFree.Core.Dialogue;

/// <summary>Readings in any order. Nothing was asked: speech that is no reading is ignored in silence (safety 4). When the aide is
/// silent, the program names the next reading once.</summary>
internal static class ReadyState
{
    public static Page Page() => new Page(StateKind.Ready)
        .WithMeasuring()
        .On(Trigger.NothingHeard, "name the next reading, once", Lead, StateKind.Ready)
        .On(Trigger.ValueAlone, "ask for the whole reading", turn => turn.Say("Say what it is, then the number."), StateKind.Ready)
        .On(Trigger.Repeat, "say the last saved", RepeatLast, StateKind.Ready)
        .On([Trigger.Cancel, Trigger.GoBack], "nothing is open", turn => turn.Say("Nothing is open."), StateKind.Ready)
        .Ignore(
            Trigger.Yes, Trigger.No, Trigger.Correction, Trigger.CountSaid, Trigger.Continue, Trigger.NextOrPrevious, Trigger.BirthDate,
            Trigger.BandNumber, Trigger.Query, Trigger.NotAReading, Trigger.TimerElapsed, Trigger.Played);

    private static Turn Lead(Turn turn)
    {
        if (turn.State.Stage.Asked > 0)
        {
            return turn;
        }

        IReadOnlyList<VitalSign> open = DueList.Open(turn.Parts.Settings.Due, turn.Set.IsSettled);
        return turn.Go(turn.State.Stage with { Asked = 1 }).Say(open.Count > 0 ? $"{SignNames.Capital(open[0])}?" : "All is taken.");
    }

    private static Turn RepeatLast(Turn turn) =>
        turn.Say(turn.Set.Saved.Count > 0 ? $"Saved: {turn.Set.Saved[^1].Text}." : "Nothing is saved for this resident.");
}
