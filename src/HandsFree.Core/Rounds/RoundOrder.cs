using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Rounds;

/// <summary>In which order residents are visited who have something due.</summary>
public static class RoundOrder
{
    /// <summary>A note on the roster with this text puts the resident at the end of the round (common practice, no source).</summary>
    public const string Isolation = "isolation";

    /// <summary>By room and bed; those who are asked again come after all others, isolation rooms last.</summary>
    /// <param name="roster">The residents.</param>
    /// <param name="open">What is still due of a resident.</param>
    /// <param name="seen">Whether the resident was visited in this round already.</param>
    public static IReadOnlyList<Resident> Of(Roster roster, Func<Resident, IReadOnlyList<VitalSign>> open, Func<Resident, bool> seen) =>
    [
        .. roster.Residents.Where(r => open(r).Count > 0)
            .OrderBy(IsIsolated).ThenBy(seen).ThenBy(r => r.Room).ThenBy(r => r.Bed, StringComparer.Ordinal),
    ];

    /// <summary>Whether the roster notes isolation.</summary>
    public static bool IsIsolated(Resident resident) => resident.Devices.Contains(Isolation, StringComparer.OrdinalIgnoreCase);
}
