using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Rules.Figures;

/// <summary>Every figure that a rule file may name.</summary>
internal static class FigureTable
{
    private static readonly IReadOnlyList<FigureKind> All =
    [
        new("any reading", "", [], _ => default(Amount)),
        new("temperature", FigureKind.TemperatureUnits, [VitalSign.Temperature], s => Spoken(s, t => t.Degrees))
        {
            Limits = LimitedValue.TemperatureFahrenheit,
        },
        new("temperature above usual", FigureKind.TemperatureUnits, [VitalSign.Temperature], s => Spoken(s, t => t.Degrees - UsualValues.Temperature(s, t.Unit))),
        new("minutes since food or drink", "min", [VitalSign.Temperature], s => Whole(s.How.MinutesSinceFoodOrDrink)),
        Single("pulse", "/min", VitalSign.Pulse, LimitedValue.Pulse),
        new("pulse remainder of its count", "/min", [VitalSign.Pulse], CountCheck.Remainder),
        new("pulse difference from its count", "/min", [VitalSign.Pulse], CountCheck.Difference),
        Single("respirations", "/min", VitalSign.Respirations, LimitedValue.Respirations),
        new("respirations remainder of their count", "/min", [VitalSign.Respirations], CountCheck.Remainder),
        new("respirations difference from their count", "/min", [VitalSign.Respirations], CountCheck.Difference),
        new("blood pressure", "", [VitalSign.BloodPressure], _ => default(Amount)),
        Single("systolic", "mm[Hg]", VitalSign.BloodPressure, LimitedValue.Systolic),
        Single("diastolic", "mm[Hg]", VitalSign.BloodPressure, LimitedValue.Diastolic),
        new("pulse pressure", "mm[Hg]", [VitalSign.BloodPressure], s => Pressure(s, b => b.PulsePressure)),
        new("pulse pressure in percent of systolic", "%", [VitalSign.BloodPressure], s => Pressure(s, b => b.Systolic == 0 ? 0 : b.PulsePressure * 100m / b.Systolic)),
        new("odd numbers of the pressure", "1", [VitalSign.BloodPressure], s => Pressure(s, b => b.Systolic % 2 + b.Diastolic % 2)),
        Fall("systolic below usual", "mm[Hg]", VitalSign.BloodPressure, LimitedValue.Systolic),
        new("systolic lying before standing", "mm[Hg]", [VitalSign.BloodPressure], s => Whole(Posture.Before(s, BodyPosition.Lying)?.Systolic)),
        new("systolic fall from lying", "mm[Hg]", [VitalSign.BloodPressure], s => Posture.Fall(s, BodyPosition.Lying, b => b.Systolic)),
        new("diastolic fall from lying", "mm[Hg]", [VitalSign.BloodPressure], s => Posture.Fall(s, BodyPosition.Lying, b => b.Diastolic)),
        new("systolic fall from sitting", "mm[Hg]", [VitalSign.BloodPressure], s => Posture.Fall(s, BodyPosition.Sitting, b => b.Systolic)),
        new("diastolic fall from sitting", "mm[Hg]", [VitalSign.BloodPressure], s => Posture.Fall(s, BodyPosition.Sitting, b => b.Diastolic)),
        new("pulse less systolic", "1", [VitalSign.Pulse, VitalSign.BloodPressure], PulseLessSystolic),
        Single("oxygen saturation", "%", VitalSign.OxygenSaturation, LimitedValue.OxygenSaturation),
        Fall("oxygen saturation below usual", "%", VitalSign.OxygenSaturation, LimitedValue.OxygenSaturation),
        new("oxygen flow above usual", "L/min", [VitalSign.OxygenSaturation], FlowAboveUsual),
        Single("weight", "[lb_av]", VitalSign.Weight, LimitedValue.WeightPounds),
        new("weight change since last", "[lb_av]", [VitalSign.Weight], WeightChange.SinceLast),
        new("weight change since last in percent", "%", [VitalSign.Weight], WeightChange.ShareSinceLast),
        new("weight loss in 30 days", "%", [VitalSign.Weight], s => WeightChange.Loss(s, 30)),
        new("weight loss in 90 days", "%", [VitalSign.Weight], s => WeightChange.Loss(s, 90)),
        new("weight loss in 180 days", "%", [VitalSign.Weight], s => WeightChange.Loss(s, 180)),
        new("weight gain in 5 days", "[lb_av]", [VitalSign.Weight], s => WeightChange.Gain(s, 5)),
        new("weight gain in 7 days", "[lb_av]", [VitalSign.Weight], s => WeightChange.Gain(s, 7)),
        Single("pain", "{score}", VitalSign.Pain, LimitedValue.Pain),
        Spreads("pulse from usual in spreads", VitalSign.Pulse, LimitedValue.Pulse, 3),
        Spreads("respirations from usual in spreads", VitalSign.Respirations, LimitedValue.Respirations, 2),
        Spreads("systolic from usual in spreads", VitalSign.BloodPressure, LimitedValue.Systolic, 6),
    ];

    /// <summary>The figures by name.</summary>
    public static IReadOnlyDictionary<string, FigureKind> ByName { get; } = All.ToDictionary(f => f.Name, StringComparer.Ordinal);

    private static FigureKind Single(string name, string unit, VitalSign sign, LimitedValue value) =>
        new(name, unit, [sign], s => SingleValue.Of(s.Reading.Value, value) is { } number ? new Amount(number) : null) { Limits = value };

    private static FigureKind Fall(string name, string unit, VitalSign sign, LimitedValue value) =>
        new(name, unit, [sign], s => UsualValues.Of(s, value) - SingleValue.Of(s.Reading.Value, value) is { } fall ? new Amount(fall) : null);

    /// <summary>A spread smaller than the least is taken as the least: five equal readings do not make the sixth odd.</summary>
    private static FigureKind Spreads(string name, VitalSign sign, LimitedValue value, decimal least) =>
        new(name, "1", [sign], s => SingleValue.Of(s.Reading.Value, value) is { } now && UsualValues.Of(s, value) is { } usual && UsualValues.Spread(s, value) is { } spread
            ? new Amount(Math.Abs(now - usual) / Math.Max(spread, least))
            : null);

    private static Amount? Spoken(Situation s, Func<BodyTemperature, decimal?> number) =>
        s.Value<BodyTemperature>() is { } t && number(t) is { } n ? new Amount(n, t.Unit == TemperatureUnit.Celsius) : null;

    private static Amount? Pressure(Situation s, Func<BloodPressure, decimal> number) =>
        s.Value<BloodPressure>() is { } b ? new Amount(number(b)) : null;

    private static Amount? Whole(int? number) => number is { } n ? new Amount(n) : null;

    private static Amount? PulseLessSystolic(Situation s) =>
        s.For(VitalSign.Pulse)?.Value<HeartRate>() is { } pulse && s.For(VitalSign.BloodPressure)?.Value<BloodPressure>() is { } pressure
            ? new Amount(pulse.PerMinute - pressure.Systolic)
            : null;

    /// <summary>Litres above what is ordered or usual; oxygen of unsaid flow counts as one litre where none is usual and as the
    /// usual flow where there is some.</summary>
    private static Amount? FlowAboveUsual(Situation s)
    {
        if (s.How.Oxygen is not { IsRoomAir: false } now)
        {
            return null;
        }

        var usual = s.Context.Resident.UsualOxygen ?? OxygenSupply.RoomAir;
        return usual.IsRoomAir
            ? new Amount(now.LitresPerMinute ?? 1)
            : usual.LitresPerMinute is { } litres && now.LitresPerMinute is { } flow ? new Amount(flow - litres) : null;
    }
}
