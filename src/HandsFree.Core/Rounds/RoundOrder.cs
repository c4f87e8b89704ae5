using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Rounds;

/// <summary>In which order residents are visited who have something due.</summary>
public static class RoundOrder
{
    /// <summary>By room and bed; those who are asked again come after all others, rooms under isolation last (common practice, no
    /// source). Who shares a room with somebody under isolation goes with the room.</summary>
    /// <param name="roster">The residents.</param>
    /// <param name="open">What is still due of a resident.</param>
    /// <param name="seen">Whether the resident was visited in this round already.</param>
    public static IReadOnlyList<Resident> Of(Roster roster, Func<Resident, IReadOnlyList<VitalSign>> open, Func<Resident, bool> seen) =>
    [
        .. roster.Residents.Where(r => open(r).Count > 0)
            .OrderBy(r => IsIsolated(roster, r)).ThenBy(seen).ThenBy(r => r.Room).ThenBy(r => r.Bed, StringComparer.Ordinal),
    ];

    /// <summary>Whether the resident's room is under isolation.</summary>
    public static bool IsIsolated(Roster roster, Resident resident) => roster.Residents.Any(r => r.Room == resident.Room && r.Isolation is not null);
}
