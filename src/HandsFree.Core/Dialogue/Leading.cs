using HandsFree.Core.Quantities;
using HandsFree.Core.Rounds;

namespace HandsFree.Core.Dialogue;

/// <summary>The program leads: it names the next reading in the ear, and then its bare number is enough (the private way, safety 8).
/// Temperature, pulse and breaths come first and fill the rest before the pressure.</summary>
internal static class Leading
{
    /// <summary>What is due of the resident in hand and not settled, in the order of the round.</summary>
    public static IReadOnlyList<VitalSign> StillDue(this Turn turn) => DueList.Open(
        DueList.Of(turn.Set.Resident, turn.Parts.Settings.Due, turn.State.Journal, turn.At), turn.Set.IsSettled);

    public static Turn Next(Turn turn)
    {
        IReadOnlyList<VitalSign> open = turn.StillDue();
        if (open.Count == 0)
        {
            return turn.Go(new Stage.Ready { Asked = 1 }).Say("All is taken.");
        }

        TimeSpan rest = RestClock.Left(turn);
        VitalSign next = rest > TimeSpan.Zero && open.Any(s => s != VitalSign.BloodPressure)
            ? open.First(s => s != VitalSign.BloodPressure)
            : open[0];
        Turn led = turn.Go(new Stage.Ready { Asked = 1, Led = next });
        return next == VitalSign.BloodPressure && rest > TimeSpan.Zero
            ? led.Say($"Blood pressure in {WaitingTime.Words(rest)}.")
            : led.Say($"{SignNames.Capital(next)}?");
    }
}
