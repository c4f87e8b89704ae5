using HandsFree.Core.Observations;

namespace HandsFree.Core.Residents;

/// <summary>A resident as the roster knows her. Room and bed are a place and no identifier.</summary>
public sealed record Resident
{
    /// <summary>The home's number for the resident; stable, says nothing outside.</summary>
    public required string Id { get; init; }

    /// <summary>The name as it is spoken in the aide's ear.</summary>
    public required string Name { get; init; }

    /// <summary>Room number, 1 to 999.</summary>
    public required int Room { get; init; }

    /// <summary>Bed letter a to d in lower case, or null in a room of one bed.</summary>
    public string? Bed { get; init; }

    /// <summary>Date of birth; day and month are the usual second identifier.</summary>
    public required DateOnly Born { get; init; }

    /// <summary>The number on band or photo, digits only, the private second identifier.</summary>
    public string? BandNumber { get; init; }

    /// <summary>Limits ordered for this resident.</summary>
    public IReadOnlyList<OrderedLimit> OrderedLimits { get; init; } = [];

    /// <summary>Arms that must not be used for a pressure, with the reason.</summary>
    public IReadOnlyDictionary<Arm, string> ArmsNotToBeUsed { get; init; } = new Dictionary<Arm, string>();

    /// <summary>Usual values from earlier records, by name as in the roster file.</summary>
    public IReadOnlyList<UsualValue> UsualValues { get; init; } = [];

    /// <summary>The oxygen that is ordered or usual, where there is any.</summary>
    public OxygenSupply? UsualOxygen { get; init; }
}
