using HandsFree.Core.Observations;
using HandsFree.Core.Residents;
using HandsFree.Scenarios.CommandLine;
using HandsFree.Scenarios.Session;

namespace HandsFree.Scenarios.Round;

/// <summary>A made-up home in which everything that a round must cope with lives, and the keys that open its residents.</summary>
internal static class RoundHome
{
    public const string CallLight = "Use the call light now.";

    public static readonly string[] Mary = ["room 12 bed b", "yes", "0303"];
    public static readonly string[] John = ["room 4", "yes", "0109"];

    private static readonly DateOnly Today = DateOnly.FromDateTime(CommandRun.Now.UtcDateTime);

    public static Roster Roster { get; } = new(
    [
        new Resident
        {
            Id = "mary", Name = "Mary Miller", Room = 12, Bed = "b", Born = new DateOnly(1941, 3, 3), BandNumber = "4711",
            UsualValues = [new UsualValue(LimitedValue.Pulse, 72)],
        },
        new Resident { Id = "ann-12", Name = "Ann Olsen", Room = 12, Bed = "a", Born = new DateOnly(1938, 10, 25) },
        new Resident
        {
            Id = "john", Name = "John Berg", Room = 4, Born = new DateOnly(1944, 1, 9),
            PostureTest = new OrderedTest("Dr Example", new DateOnly(2026, 2, 20)),
            ArmsNotToBeUsed = new Dictionary<Arm, string> { [Arm.Left] = "fistula" },
        },
        new Resident { Id = "ann-7", Name = "Ann Olsen", Room = 7, Born = new DateOnly(1936, 2, 29) },
        new Resident { Id = "ida", Name = "Ida Voss", Room = 8, Bed = "a", Born = new DateOnly(1940, 5, 6), BandNumber = "101" },
        new Resident { Id = "ada", Name = "Ada Voss", Room = 8, Bed = "b", Born = new DateOnly(1940, 5, 6), BandNumber = "102" },
        new Resident { Id = "carl", Name = "Carl Ness", Room = 9, Born = new DateOnly(1939, 1, 2), Away = new Absence("hospital", Today, null) },
        new Resident { Id = "jon", Name = "Jon Falk", Room = 11, Born = new DateOnly(1942, 7, 8), Moved = new Move(10, null, Today) },
        new Resident { Id = "eve", Name = "Eve Lind", Room = 3, Born = new DateOnly(1937, 9, 1), Isolation = "droplet" },
    ]);

    /// <summary>A session with nobody identified.</summary>
    public static SessionRig Rig() => new() { Roster = Roster };

    /// <summary>What the program said last.</summary>
    public static string Last(this SessionRig rig) => rig.Said.Last();
}
