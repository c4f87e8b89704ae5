using HandsFree.Core.Quantities;

namespace HandsFree.Core.Observations;

/// <summary>Which circumstances belong to which vital sign.</summary>
internal static class CircumstancesFit
{
    /// <summary>Only what can be said of this sign.</summary>
    public static Circumstances For(this Circumstances how, VitalSign sign) => new()
    {
        Site = sign == VitalSign.Temperature ? how.Site : null,
        Arm = sign == VitalSign.BloodPressure ? how.Arm : null,
        Position = sign == VitalSign.BloodPressure ? how.Position : null,
        Oxygen = sign == VitalSign.OxygenSaturation ? how.Oxygen : null,
        Delivery = sign == VitalSign.OxygenSaturation ? how.Delivery : null,
        Cuff = sign == VitalSign.BloodPressure ? how.Cuff : null,
        Device = how.Device,
        Medicine = how.Medicine,
        Observed = sign == VitalSign.Pain && how.Observed,
        Uneven = sign == VitalSign.Pulse && how.Uneven,
        Machine = how.Machine,
    };

    /// <summary>All but what can be said of this sign; what fits any was said of one reading.</summary>
    public static Circumstances Without(this Circumstances how, VitalSign sign) => how with
    {
        Site = sign == VitalSign.Temperature ? null : how.Site,
        Arm = sign == VitalSign.BloodPressure ? null : how.Arm,
        Position = sign == VitalSign.BloodPressure ? null : how.Position,
        Oxygen = sign == VitalSign.OxygenSaturation ? null : how.Oxygen,
        Delivery = sign == VitalSign.OxygenSaturation ? null : how.Delivery,
        Cuff = sign == VitalSign.BloodPressure ? null : how.Cuff,
        Device = null,
        Medicine = null,
        Observed = sign != VitalSign.Pain && how.Observed,
        Uneven = sign != VitalSign.Pulse && how.Uneven,
    };

    /// <summary>The vital sign that something said alone belongs to; null where it can be any.</summary>
    public static VitalSign? Sign(this Circumstances how) => how switch
    {
        { Site: not null } => VitalSign.Temperature,
        { Arm: not null } or { Position: not null } or { Cuff: not null } => VitalSign.BloodPressure,
        { Oxygen: not null } or { Delivery: not null } => VitalSign.OxygenSaturation,
        { Observed: true } => VitalSign.Pain,
        { Uneven: true } => VitalSign.Pulse,
        _ => null,
    };
}
