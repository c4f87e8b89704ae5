using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Rules.Figures;

/// <summary>The single number of a quantity that a limit stands on.</summary>
public static class SingleValue
{
    /// <summary>The number in the unit of the limited value, or null where the quantity has no such number.</summary>
    public static decimal? Of(Quantity quantity, LimitedValue value) => (quantity, value) switch
    {
        (BodyTemperature t, LimitedValue.TemperatureFahrenheit) => t.Fahrenheit,
        (HeartRate p, LimitedValue.Pulse) => p.PerMinute,
        (RespiratoryRate r, LimitedValue.Respirations) => r.PerMinute,
        (BloodPressure b, LimitedValue.Systolic) => b.Systolic,
        (BloodPressure b, LimitedValue.Diastolic) => b.Diastolic,
        (OxygenSaturation s, LimitedValue.OxygenSaturation) => s.Percent,
        (BodyWeight w, LimitedValue.WeightPounds) => w.Pounds,
        (PainScore p, LimitedValue.Pain) => p.OfTen,
        _ => null,
    };
}
