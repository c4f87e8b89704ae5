namespace HandsFree.Core.Residents;

/// <summary>The residents of the home.</summary>
/// <param name="Residents">All of them; ids are unique, room and bed too.</param>
public sealed record Roster(IReadOnlyList<Resident> Residents)
{
    /// <summary>Who lives there: one, or several where the bed was not said, or nobody.</summary>
    /// <param name="room">The room.</param>
    /// <param name="bed">The bed; null where it was not said.</param>
    public IReadOnlyList<Resident> At(int room, string? bed) =>
        [.. Residents.Where(r => r.Room == room && (bed is null || r.Bed == bed))];

    /// <summary>The resident of that id, or null.</summary>
    public Resident? ById(string id) => Residents.FirstOrDefault(r => r.Id == id);

    /// <summary>Whether another resident has the same name: an alert is said.</summary>
    public bool SharesName(Resident resident) =>
        Residents.Any(r => r.Id != resident.Id && string.Equals(r.Name, resident.Name, StringComparison.OrdinalIgnoreCase));
}
