using HandsFree.Core.Journal;
using HandsFree.Core.Observations;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Simulation.Bodies;
using HandsFree.Simulation.Rounds;

namespace HandsFree.Simulation;

/// <summary>An invented home with its residents and the record of its rounds, made from a seed. The values follow the time of day and
/// illnesses; what follows from a value is decided by the rules themselves.</summary>
public sealed class SimulatedHome
{
    /// <summary>The home's name; it says on every page that nothing here is real.</summary>
    public const string Name = "Invented House (simulated, nobody here is real)";

    private const int MostInUnit = 30;
    private static readonly string[] UnitNames = ["Birch", "Cedar", "Elm", "Maple", "Oak", "Pine", "Rowan", "Willow"];

    private readonly SimulationPlan plan;
    private readonly IRulebook rules;
    private readonly Dictionary<string, Body> bodies = [];

    /// <summary>Draws the residents.</summary>
    /// <param name="plan">What is simulated.</param>
    /// <param name="rules">Decide what follows from each value.</param>
    public SimulatedHome(SimulationPlan plan, IRulebook rules)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(plan.Residents, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(plan.Residents, MostInUnit * UnitNames.Length);
        ArgumentOutOfRangeException.ThrowIfLessThan(plan.Days, 1);
        (this.plan, this.rules) = (plan, rules);
        Roster = new([.. Enumerable.Range(0, plan.Residents).Select(Resident)]);
    }

    /// <summary>Who lives there at the end.</summary>
    public Roster Roster { get; }

    /// <summary>The record, oldest first.</summary>
    public IEnumerable<JournalEvent> Events() => new RoundBook(plan, rules, Roster, bodies).Events();

    private Resident Resident(int number)
    {
        Chance chance = Chance.Of(plan.Seed, "resident", number);
        int unit = number / MostInUnit;
        int room = (100 * (unit + 1)) + 1 + (number % MostInUnit / 2);
        Baseline usual = Baseline.Draw(chance);
        DateTimeOffset began = plan.Until.AddDays(-plan.Days);
        List<Illness> illnesses = Illnesses.Draw(plan, unit, usual, chance);
        Body body = new(usual, illnesses, chance.Of(Sites), began, chance.Normal(0, 4));
        string id = $"{1000 + number}";
        bodies[id] = body;
        int born = 1926 + chance.Whole(0, 24);
        return new Resident
        {
            Id = id,
            Name = $"{Names.First[number * 7 % Names.First.Length]} {Names.Family[number * 5 % Names.Family.Length]}",
            Room = room,
            Bed = number % 2 == 0 ? "a" : "b",
            Unit = UnitNames[unit],
            Born = new DateOnly(born, chance.Whole(1, 12), chance.Whole(1, 28)),
            BandNumber = $"{40000 + number}",
            OrderedLimits = Orders(usual, chance, DateOnly.FromDateTime(began.DateTime)),
            UsualOxygen = usual.Litres > 0 ? new OxygenSupply(usual.Litres) : null,
            Conditions = usual.HeartFailure ? ["heart failure"] : [],
            UsualFrozen = [.. illnesses.Where(i => i.Antibiotic && i.Begins > plan.Until.AddDays(-60)).Select(i => new UsualFreeze(
                "antibiotic", DateOnly.FromDateTime(i.Begins.AddDays(1).DateTime), DateOnly.FromDateTime(i.Ends.DateTime)))],
        };
    }

    private static readonly TemperatureSite[] Sites = [TemperatureSite.Mouth, TemperatureSite.Mouth, TemperatureSite.Ear, TemperatureSite.Forehead];

    private static List<OrderedLimit> Orders(Baseline usual, Chance chance, DateOnly on)
    {
        List<OrderedLimit> orders = [];
        if (usual.Litres > 0)
        {
            orders.Add(new(LimitedValue.OxygenSaturation, 88, 92 + chance.Whole(2, 4), "Dr Invented", on));
        }

        if (usual.Systolic > 150)
        {
            orders.Add(new(LimitedValue.Systolic, null, 190, "Dr Invented", on));
        }

        return orders;
    }
}
