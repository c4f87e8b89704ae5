namespace HandsFree.Core.Observations;

/// <summary>What a resident breathes.</summary>
/// <param name="LitresPerMinute">0 for room air; the flow where it was said; null for oxygen of unsaid flow.</param>
public sealed record OxygenSupply(decimal? LitresPerMinute)
{
    /// <summary>Room air.</summary>
    public static OxygenSupply RoomAir { get; } = new(0m);

    /// <summary>Oxygen, the flow unsaid.</summary>
    public static OxygenSupply FlowUnsaid { get; } = new((decimal?)null);

    /// <summary>Whether this is room air.</summary>
    public bool IsRoomAir => LitresPerMinute == 0m;
}
