namespace HandsFree.Simulation.Bodies;

/// <summary>What is added to what is usual.</summary>
/// <param name="Temperature">Degrees Fahrenheit.</param>
/// <param name="Pulse">Per minute.</param>
/// <param name="Respirations">Per minute.</param>
/// <param name="Systolic">mm[Hg]; half of it is added to the diastolic.</param>
/// <param name="Saturation">Percent.</param>
/// <param name="Weight">Pounds.</param>
internal readonly record struct Shift(double Temperature, double Pulse, double Respirations, double Systolic, double Saturation, double Weight)
{
    public static Shift operator +(Shift a, Shift b) => new(
        a.Temperature + b.Temperature, a.Pulse + b.Pulse, a.Respirations + b.Respirations, a.Systolic + b.Systolic,
        a.Saturation + b.Saturation, a.Weight + b.Weight);

    public static Shift operator *(Shift a, double by) => new(
        a.Temperature * by, a.Pulse * by, a.Respirations * by, a.Systolic * by, a.Saturation * by, a.Weight * by);
}
