namespace HandsFree.Core.Observations;

/// <summary>Joins what was said at different moments about one reading.</summary>
public static class CircumstancesJoin
{
    /// <summary>The first with everything that the second says; the second wins where both speak.</summary>
    public static Circumstances With(this Circumstances first, Circumstances second) => first with
    {
        Site = second.Site ?? first.Site,
        Arm = second.Arm ?? first.Arm,
        Position = second.Position ?? first.Position,
        Oxygen = Supply(first.Oxygen, second.Oxygen),
        Delivery = second.Delivery ?? (second.Oxygen is { IsRoomAir: true } ? null : first.Delivery),
        Cuff = second.Cuff ?? first.Cuff,
        Device = second.Device ?? first.Device,
        Medicine = second.Medicine ?? first.Medicine,
        Observed = second.Observed || first.Observed,
        Uneven = second.Uneven || first.Uneven,
        Machine = second.Machine || first.Machine,
        Counted = second.Counted ?? first.Counted,
        CountedSeconds = second.CountedSeconds ?? first.CountedSeconds,
        MinutesRested = second.MinutesRested ?? first.MinutesRested,
        MinutesStanding = second.MinutesStanding ?? first.MinutesStanding,
        TooEarly = second.TooEarly || first.TooEarly,
        SaidAsGuessFirst = second.SaidAsGuessFirst || first.SaidAsGuessFirst,
    };

    // Oxygen of unsaid flow, as a mask tells, takes no flow away that was said.
    private static OxygenSupply? Supply(OxygenSupply? first, OxygenSupply? second) => second switch
    {
        null => first,
        { LitresPerMinute: null } when first is { IsRoomAir: false } => first,
        _ => second,
    };
}
