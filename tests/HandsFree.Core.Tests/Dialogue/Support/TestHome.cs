using HandsFree.Core.Observations;
using HandsFree.Core.Residents;
using HandsFree.Core.Rounds;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>A made-up home.</summary>
internal static class TestHome
{
    public static readonly DateTimeOffset Morning = new(2026, 3, 2, 8, 0, 0, TimeSpan.FromHours(-6));

    public static readonly RoundPlan Round = new(new Core.Dialogue.DialogueSettings().Due);

    public static Roster Roster { get; } = new(
    [
        new Resident
        {
            Id = "r-12b", Name = "Mary Miller", Room = 12, Bed = "b", Born = new DateOnly(1941, 3, 3), BandNumber = "4711",
            UsualValues = [new UsualValue(LimitedValue.Pulse, 72), new UsualValue(LimitedValue.TemperatureFahrenheit, 98.2m)],
        },
        new Resident { Id = "r-12a", Name = "Ann Olsen", Room = 12, Bed = "a", Born = new DateOnly(1938, 10, 25) },
        new Resident
        {
            Id = "r-4", Name = "John Berg", Room = 4, Born = new DateOnly(1944, 1, 9),
            PostureTest = new OrderedTest("Dr Lund", new DateOnly(2026, 2, 20)),
            ArmsNotToBeUsed = new Dictionary<Arm, string> { [Arm.Left] = "fistula" },
        },
        new Resident { Id = "r-7", Name = "Ann Olsen", Room = 7, Born = new DateOnly(1936, 2, 29) },
    ]);
}
