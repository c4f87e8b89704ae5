using HandsFree.Core.Meanings;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Dialogue;

/// <summary>Words about the round: machine or by hand, rest, the silence of the cuff, private, posture test, who is next.</summary>
internal static class RoundWords
{
    public static Turn Hear(Turn turn) => (turn.Meant<Meaning.AboutRound>().Word, turn.State.Set) switch
    {
        (RoundWord.Machine, _) => Machine(turn, true).Say("Machine, for this round."),
        (RoundWord.ByHand, _) => Machine(turn, false).Say("By hand, for this round."),
        (RoundWord.WhoIsNext, _) => turn.Say(RoundOrderTexts.Next(turn)),
        (_, null) => turn,
        (RoundWord.Cuff, _) => turn.Go(Silent(turn.State.Stage)),
        (RoundWord.WasResting, _) => RestClock.End(turn).Say("Noted. The rest is done."),
        (RoundWord.WasActive, _) => RestClock.Begin(turn).Say("The rest begins now."),
        (RoundWord.PostureTest, _) => PostureTest.Begin(turn),
        (RoundWord.Private, _) => Leading.Next(turn),
        var (word, _) => throw new ArgumentOutOfRangeException(nameof(turn), word, "no such word"),
    };

    private static Turn Machine(Turn turn, bool machine) => turn with { State = turn.State with { Machine = machine } };

    // The stethoscope fills both ears (safety 3): the number of the pressure is awaited, and nothing is said before it.
    private static Stage Silent(Stage stage) => stage is Stage.AwaitingRecheck { Sign: VitalSign.BloodPressure }
        ? stage with { Silent = true }
        : new Stage.Ready { Led = VitalSign.BloodPressure, Silent = true };
}
