using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;

namespace HandsFree.Simulation.Bodies;

/// <summary>A simulated resident's body: what a good measurement would find.</summary>
/// <param name="baseline">What is usual.</param>
/// <param name="illnesses">What she falls ill with.</param>
/// <param name="site">Where her temperature is taken.</param>
/// <param name="began">From when her weight drifts.</param>
/// <param name="drift">Pounds a year that she gains or loses.</param>
internal sealed class Body(Baseline baseline, IReadOnlyList<Illness> illnesses, TemperatureSite site, DateTimeOffset began, double drift)
{
    /// <summary>What is usual for her.</summary>
    public Baseline Usual => baseline;

    /// <summary>What she falls ill with, in the order of time.</summary>
    public IReadOnlyList<Illness> Illnesses => illnesses;

    /// <summary>Whether somebody sees that she is not well: half a day after it began, until two days after its end.</summary>
    public bool IsWatched(DateTimeOffset at) => illnesses.Any(i => at >= i.Begins.AddHours(12) && at <= i.Ends.AddDays(2));

    /// <summary>A measurement with its error.</summary>
    public Reading Measure(VitalSign sign, DateTimeOffset at, double hour, Chance chance, bool recheck)
    {
        Shift ill = illnesses.Aggregate(default(Shift), (sum, illness) => sum + illness.At(at));
        int Near(double value, double error) => (int)Math.Round(chance.Normal(value, error));
        switch (sign)
        {
            case VitalSign.Temperature:
                double degrees = chance.Normal(baseline.Temperature + DayPattern.Temperature(hour) + ill.Temperature, 0.2);
                return new(BodyTemperature.FromFahrenheit(Math.Round((decimal)degrees, 1)), new Circumstances { Site = site });
            case VitalSign.Pulse:
                int pulse = Near((baseline.Pulse * (1 + DayPattern.Pulse(hour))) + ill.Pulse, 3);
                bool whole = recheck || baseline.Uneven;
                int counted = whole ? pulse : (int)Math.Round(pulse / 2.0);
                return new(
                    HeartRate.FromPerMinute(whole ? counted : 2 * counted),
                    new Circumstances { Counted = counted, CountedSeconds = whole ? 60 : 30, Uneven = baseline.Uneven });
            case VitalSign.Respirations:
                int breaths = Math.Max(9, Near(baseline.Respirations + ill.Respirations, 1.2));
                return new(RespiratoryRate.FromPerMinute(breaths), new Circumstances { Counted = breaths, CountedSeconds = 60 });
            case VitalSign.BloodPressure:
                double rest = 1 + DayPattern.Pressure(hour) + (recheck ? 0 : chance.Happens(0.03) ? 0.2 : 0);
                int upper = Near((baseline.Systolic + ill.Systolic) * rest, 6);
                int lower = Math.Min(upper - 20, Near((baseline.Diastolic + (ill.Systolic / 2)) * rest, 4));
                return new(
                    BloodPressure.FromMillimetresOfMercury(upper, lower),
                    new Circumstances { Arm = chance.Happens(0.8) ? Arm.Left : Arm.Right, Position = BodyPosition.Sitting, Machine = true });
            case VitalSign.OxygenSaturation:
                int percent = Math.Clamp(Near(baseline.Saturation + ill.Saturation, 0.8), 70, 100);
                return new(OxygenSaturation.FromPercent(percent), new Circumstances { Oxygen = new OxygenSupply(baseline.Litres), Machine = true });
            case VitalSign.Weight:
                double pounds = chance.Normal(baseline.Weight + (drift * (at - began).TotalDays / 365) + ill.Weight, 0.5);
                return new(BodyWeight.FromPounds(Math.Round((decimal)pounds, 1)), Circumstances.Unsaid);
            case VitalSign.Pain:
                return new(PainScore.FromOfTen(chance.Whole(1, 5)), Circumstances.Unsaid);
            default:
                throw new ArgumentOutOfRangeException(nameof(sign), sign, "no such vital sign");
        }
    }
}
