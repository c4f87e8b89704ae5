using HandsFree.Core.Residents;

namespace HandsFree.Exchange.Rosters;

/// <summary>Joins the present roster with what a file says of all residents: whoever is not in the file lives there no more.</summary>
public static class RosterMerge
{
    /// <summary>The roster after the import, in the order of the file. What the file does not speak of stays; a new place is noted as a move.</summary>
    /// <param name="present">The roster as it is.</param>
    /// <param name="imported">All residents of the file.</param>
    /// <param name="today">The day of the import.</param>
    public static Roster Of(Roster present, IReadOnlyList<ImportedResident> imported, DateOnly today) =>
        new([.. imported.Select(i => present.ById(i.Resident.Id) is { } before ? Joined(before, i, today) : i.Resident)]);

    private static Resident Joined(Resident before, ImportedResident imported, DateOnly today)
    {
        Resident now = imported.Resident;
        T Of<T>(string column, Func<Resident, T> field) => field(imported.Given.Contains(column) ? now : before);
        Resident joined = before with
        {
            Name = Of(RosterColumns.Name, r => r.Name),
            OfficialName = Of(RosterColumns.OfficialName, r => r.OfficialName),
            Room = Of(RosterColumns.Room, r => r.Room),
            Bed = Of(imported.Given.Contains(RosterColumns.Bed) ? RosterColumns.Bed : RosterColumns.Room, r => r.Bed),
            Unit = Of(RosterColumns.Unit, r => r.Unit),
            Born = Of(RosterColumns.Born, r => r.Born),
            BandNumber = Of(RosterColumns.BandNumber, r => r.BandNumber),
            OrderedLimits = Of(RosterColumns.OrderedLimits, r => r.OrderedLimits),
            ArmsNotToBeUsed = Of(RosterColumns.Arms, r => r.ArmsNotToBeUsed),
            UsualValues = Of(RosterColumns.UsualValues, r => r.UsualValues),
            UsualOxygen = Of(RosterColumns.Oxygen, r => r.UsualOxygen),
            ArmCentimetres = Of(RosterColumns.ArmCentimetres, r => r.ArmCentimetres),
            Devices = Of(RosterColumns.Devices, r => r.Devices),
            Conditions = Of(RosterColumns.Conditions, r => r.Conditions),
            Schedule = Of(RosterColumns.Schedule, r => r.Schedule),
            UsualFrozen = Of(RosterColumns.UsualFrozen, r => r.UsualFrozen),
            Isolation = Of(RosterColumns.Isolation, r => r.Isolation),
            PostureTest = Of(RosterColumns.PostureTest, r => r.PostureTest),
            Away = Of(RosterColumns.Away, r => r.Away),
        };
        return (joined.Room, joined.Bed) == (before.Room, before.Bed) ? joined : joined with { Moved = new Move(before.Room, before.Bed, today) };
    }
}
