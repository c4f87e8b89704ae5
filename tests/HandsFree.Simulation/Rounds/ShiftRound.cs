namespace HandsFree.Simulation.Rounds;

/// <summary>A round of a shift: when it begins after midnight, and who is visited.</summary>
/// <param name="Name">The shift.</param>
/// <param name="Begins">After midnight, the home's time.</param>
/// <param name="OfAll">Everybody is visited; else only who is watched.</param>
internal sealed record ShiftRound(string Name, TimeSpan Begins, bool OfAll)
{
    /// <summary>Those of a day, in the order of time.</summary>
    public static IReadOnlyList<ShiftRound> OfDay { get; } =
    [
        new("night", new(5, 10, 0), false),
        new("day", new(8, 0, 0), true),
        new("evening", new(16, 30, 0), false),
    ];
}
