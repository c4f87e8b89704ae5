using HandsFree.Core.Observations;

namespace HandsFree.Core.Residents;

/// <summary>A resident as the roster knows her. Room and bed are a place and no identifier.</summary>
public sealed record Resident
{
    /// <summary>The home's number for the resident; stable, says nothing outside.</summary>
    public required string Id { get; init; }

    /// <summary>The name as it is spoken in the aide's ear.</summary>
    public required string Name { get; init; }

    /// <summary>The name as it is on band or photo, where it is not the spoken one.</summary>
    public string? OfficialName { get; init; }

    /// <summary>Room number, 1 to 999.</summary>
    public required int Room { get; init; }

    /// <summary>Bed letter a to d in lower case, or null in a room of one bed.</summary>
    public string? Bed { get; init; }

    /// <summary>The unit (wing, floor, household) as the home calls it; null where the home has one alone.</summary>
    public string? Unit { get; init; }

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

    /// <summary>Where her temperature is usually taken: the site of her usual temperature, where it is one; else null.</summary>
    public TemperatureSite? UsualSite => UsualValues.Select(u => u.Site).OfType<TemperatureSite>().Distinct().ToArray() is [var only] ? only : null;

    /// <summary>The oxygen that is ordered or usual, where there is any.</summary>
    public OxygenSupply? UsualOxygen { get; init; }

    /// <summary>The circumference of the upper arm in centimetres, which says the cuff; null where it was not measured.</summary>
    public decimal? ArmCentimetres { get; init; }

    /// <summary>Notes on devices as they are spoken: "pacemaker", "own thermometer".</summary>
    public IReadOnlyList<string> Devices { get; init; } = [];

    /// <summary>Conditions that a rule asks for, of <see cref="KnownConditions"/>.</summary>
    public IReadOnlyList<string> Conditions { get; init; } = [];

    /// <summary>What is due of this resident and how often; a sign that is not in it is due as the home's round says.</summary>
    public IReadOnlyList<ScheduledSign> Schedule { get; init; } = [];

    /// <summary>The order of pressures lying and standing; null where there is none, then no posture test is done.</summary>
    public OrderedTest? PostureTest { get; init; }

    /// <summary>The isolation that the room is under, as it is spoken ("contact", "droplet"); null where there is none.</summary>
    public string? Isolation { get; init; }

    /// <summary>Times in which readings do not count as usual: an antibiotic, a plan.</summary>
    public IReadOnlyList<UsualFreeze> UsualFrozen { get; init; } = [];

    /// <summary>Where she is while she is not there; null for a resident who is.</summary>
    public Absence? Away { get; init; }

    /// <summary>Her last move within the home, or null.</summary>
    public Move? Moved { get; init; }

    /// <summary>The conditions that a roster may note because a rule asks for them.</summary>
    public static IReadOnlyList<string> KnownConditions { get; } = ["heart failure"];

    /// <summary>Whether a reading of that moment does not count as usual: an antibiotic was noted, or a plan (a limit with an end) stood.</summary>
    public bool UsualIsFrozen(DateTimeOffset at)
    {
        DateOnly day = DateOnly.FromDateTime(at.DateTime);
        return UsualFrozen.Any(f => day >= f.From && (f.Until is not { } last || day <= last))
            || OrderedLimits.Any(o => o.Until is { } end && day >= o.OrderedOn && at < end);
    }
}
