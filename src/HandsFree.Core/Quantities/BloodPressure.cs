namespace HandsFree.Core.Quantities;

/// <summary>Blood pressure, systolic over diastolic, in millimetres of mercury (UCUM mm[Hg]).</summary>
public sealed record BloodPressure : Quantity
{
    /// <summary>The greatest representable number on either side, included; the least is 0.</summary>
    public const int Greatest = 400;

    private BloodPressure(int systolic, int diastolic) => (Systolic, Diastolic) = (systolic, diastolic);

    /// <summary>The upper number, mm[Hg].</summary>
    public int Systolic { get; }

    /// <summary>The lower number, mm[Hg].</summary>
    public int Diastolic { get; }

    /// <summary>Systolic less diastolic, mm[Hg]; not positive where the pair was swapped.</summary>
    public int PulsePressure => Systolic - Diastolic;

    /// <summary>Mean arterial pressure, mm[Hg]: diastolic and a third of the pulse pressure (arithmetic of the trade).</summary>
    public decimal MeanArterial => Diastolic + PulsePressure / 3m;

    /// <inheritdoc/>
    public override VitalSign Sign => VitalSign.BloodPressure;

    /// <summary>Makes the pair; a swapped pair can be represented, the rules find it.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A number outside 0 to <see cref="Greatest"/>.</exception>
    public static BloodPressure FromMillimetresOfMercury(int systolic, int diastolic) =>
        new(Within(systolic, 0, Greatest, "mmHg"), Within(diastolic, 0, Greatest, "mmHg"));

    /// <summary>The mean of several readings of one sitting, each side rounded half away from zero to whole mm[Hg].</summary>
    /// <exception cref="ArgumentException">No reading.</exception>
    public static BloodPressure MeanOf(IReadOnlyCollection<BloodPressure> readings) => readings.Count == 0
        ? throw new ArgumentException("a mean needs at least one reading", nameof(readings))
        : FromMillimetresOfMercury(Rounded(readings.Average(r => (decimal)r.Systolic)), Rounded(readings.Average(r => (decimal)r.Diastolic)));

    private static int Rounded(decimal value) => (int)decimal.Round(value, 0, MidpointRounding.AwayFromZero);
}
