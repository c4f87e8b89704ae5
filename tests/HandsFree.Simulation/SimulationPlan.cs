namespace HandsFree.Simulation;

/// <summary>What is simulated. The same plan gives the same home, event for event.</summary>
/// <param name="Until">The last moment; the round of that shift breaks off there.</param>
public sealed record SimulationPlan(DateTimeOffset Until)
{
    /// <summary>How many residents, 1 to 240, two a room, at most thirty a unit.</summary>
    public int Residents { get; init; } = 120;

    /// <summary>How many days before <see cref="Until"/> the record begins.</summary>
    public int Days { get; init; } = 365;

    /// <summary>The home's time zone.</summary>
    public TimeZoneInfo Zone { get; init; } = TimeZoneInfo.FindSystemTimeZoneById(ZoneName);

    /// <summary>The name of the time zone that is taken where none is named.</summary>
    public const string ZoneName = "America/Chicago";

    /// <summary>The seed of all chance.</summary>
    public int Seed { get; init; } = 1;
}
