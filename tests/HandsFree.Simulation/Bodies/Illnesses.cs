namespace HandsFree.Simulation.Bodies;

/// <summary>When residents fall ill. About four infections in a thousand resident days, as reported of nursing homes (Strausbaugh and
/// Joseph, Infect Control Hosp Epidemiol 2000;21:674-679: 1.8 to 13.5, from memory); the rest is invented.</summary>
internal static class Illnesses
{
    private const double InfectionsADay = 0.004;
    private const double DehydrationsADay = 0.0008;
    private const double FluidADay = 0.004;

    /// <summary>Draws them for one resident, in the order of time.</summary>
    /// <param name="plan">From when until when.</param>
    /// <param name="unit">The number of her unit: influenza comes to a unit.</param>
    /// <param name="usual">Who has heart failure gathers water.</param>
    /// <param name="chance">Her chance.</param>
    public static List<Illness> Draw(SimulationPlan plan, int unit, Baseline usual, Chance chance)
    {
        List<Illness> drawn = [];
        DateTimeOffset began = plan.Until.AddDays(-plan.Days);
        DateTimeOffset outbreak = Outbreak(plan, unit);
        for (int day = 0; day < plan.Days; day++)
        {
            DateTimeOffset at = began.AddDays(day + chance.Between(0, 1));
            if (drawn.Count > 0 && at < drawn[^1].Ends.AddDays(5))
            {
                continue;
            }

            IllnessKind? kind = chance.Happens(InfectionsADay) ? chance.Happens(0.45) ? IllnessKind.ChestInfection : IllnessKind.UrinaryInfection
                : at >= outbreak && at < outbreak.AddDays(14) && chance.Happens(0.03) ? IllnessKind.Influenza
                : usual.HeartFailure && chance.Happens(FluidADay) ? IllnessKind.FluidOverload
                : chance.Happens(DehydrationsADay) ? IllnessKind.Dehydration
                : null;
            if (kind is { } ill)
            {
                drawn.Add(new Illness(ill, at, chance.Between(5, 10), chance.Between(0.5, 1.15)));
            }
        }

        return drawn;
    }

    // Each unit has one outbreak in its year, between December and March.
    private static DateTimeOffset Outbreak(SimulationPlan plan, int unit)
    {
        DateTimeOffset winter = new(plan.Until.Year - (plan.Until.Month < 12 ? 1 : 0), 12, 1, 0, 0, 0, plan.Until.Offset);
        return winter.AddDays(Chance.Of(plan.Seed, "outbreak", unit).Whole(0, 100));
    }
}
