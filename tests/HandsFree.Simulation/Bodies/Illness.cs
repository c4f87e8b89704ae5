namespace HandsFree.Simulation.Bodies;

/// <summary>One illness of one resident.</summary>
/// <param name="Kind">What.</param>
/// <param name="Begins">When it begins.</param>
/// <param name="Days">How long it lasts.</param>
/// <param name="Strength">1 is as in <see cref="At"/>; 0.5 half of it.</param>
internal sealed record Illness(IllnessKind Kind, DateTimeOffset Begins, double Days, double Strength)
{
    private const double RiseDays = 1.5;

    /// <summary>When it is over.</summary>
    public DateTimeOffset Ends => Begins.AddDays(Days);

    /// <summary>Whether an antibiotic is given for it.</summary>
    public bool Antibiotic => Kind is IllnessKind.ChestInfection or IllnessKind.UrinaryInfection;

    /// <summary>What it adds at a moment. The pulse follows the fever by 10 a minute and degree Celsius (Liebermeister's rule, from
    /// memory); the rest is invented.</summary>
    public Shift At(DateTimeOffset moment)
    {
        double course = Strength * Course((moment - Begins).TotalDays);
        double fever = Kind switch { IllnessKind.ChestInfection => 3.2, IllnessKind.UrinaryInfection => 2.4, IllnessKind.Influenza => 3.6, _ => 0 } * course;
        Shift felt = new(fever, fever / 1.8 * 10, fever / 1.8, 0, 0, 0);
        return Kind switch
        {
            IllnessKind.ChestInfection => felt + new Shift(0, 4, 7, -8, -6, 0) * course,
            IllnessKind.Influenza => felt + new Shift(0, 0, 2, 0, -2, 0) * course,
            IllnessKind.FluidOverload => felt + new Shift(0, 8, 5, 6, -4, 6) * course,
            IllnessKind.Dehydration => felt + new Shift(0.3, 22, 1, -32, 0, -4) * course,
            _ => felt,
        };
    }

    // Rises within a day and a half, stays, and goes in the last third.
    private double Course(double days) => days switch
    {
        < 0 => 0,
        _ when days > Days => 0,
        < RiseDays => days / RiseDays,
        _ when days > Days * 2 / 3 => (Days - days) / (Days / 3),
        _ => 1,
    };
}
