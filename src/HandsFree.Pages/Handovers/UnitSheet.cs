using HandsFree.Core.Quantities;

namespace HandsFree.Pages.Handovers;

/// <summary>The pages of one unit.</summary>
/// <param name="Unit">Its name; null for residents of no named unit.</param>
/// <param name="Summary">How many there are, and of what.</param>
/// <param name="Sections">The exceptions, the gravest first.</param>
/// <param name="Everyone">All residents of the unit by room and bed.</param>
public sealed record UnitSheet(string? Unit, string Summary, IReadOnlyList<SheetSection> Sections, IReadOnlyList<ResidentBlock> Everyone)
{
    /// <summary>The signs that have a column.</summary>
    public static IReadOnlyList<VitalSign> Columns { get; } =
    [
        VitalSign.Temperature, VitalSign.Pulse, VitalSign.Respirations, VitalSign.BloodPressure, VitalSign.OxygenSaturation, VitalSign.Weight,
    ];
}
