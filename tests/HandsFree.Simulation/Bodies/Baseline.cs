namespace HandsFree.Simulation.Bodies;

/// <summary>What is usual for one resident, at noon, in health. All numbers are invented within what is common in old age.</summary>
/// <param name="Temperature">Degrees Fahrenheit.</param>
/// <param name="Pulse">Per minute.</param>
/// <param name="Respirations">Per minute.</param>
/// <param name="Systolic">mm[Hg].</param>
/// <param name="Diastolic">mm[Hg].</param>
/// <param name="Saturation">Percent, on what she usually breathes.</param>
/// <param name="Weight">Pounds.</param>
/// <param name="Uneven">The pulse is uneven (atrial fibrillation).</param>
/// <param name="Litres">Oxygen in litres a minute; 0 for room air.</param>
/// <param name="HeartFailure">The roster notes heart failure.</param>
internal sealed record Baseline(
    double Temperature, double Pulse, double Respirations, double Systolic, double Diastolic, double Saturation, double Weight,
    bool Uneven, decimal Litres, bool HeartFailure)
{
    /// <summary>Draws one.</summary>
    public static Baseline Draw(Chance chance)
    {
        bool lungs = chance.Happens(0.12);
        double systolic = Math.Clamp(chance.Normal(133, 14), 104, 166);
        return new(
            Temperature: chance.Normal(97.6, 0.3),
            Pulse: Math.Clamp(chance.Normal(74, 6), 62, 90),
            Respirations: Math.Clamp(chance.Normal(16.5, 1.2), 14, 19),
            Systolic: systolic,
            Diastolic: Math.Clamp((systolic * 0.42) + chance.Normal(18, 5), 54, 90),
            Saturation: lungs ? chance.Between(91.5, 93.5) : chance.Between(95, 98),
            Weight: chance.Between(102, 205),
            Uneven: chance.Happens(0.1),
            Litres: lungs && chance.Happens(0.6) ? 2 : 0,
            HeartFailure: chance.Happens(0.15));
    }
}
