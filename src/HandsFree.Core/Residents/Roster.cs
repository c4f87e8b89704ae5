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

    /// <summary>The units that residents live in, by name; none where the roster names none.</summary>
    public IReadOnlyList<string> Units => [.. Residents.Select(r => r.Unit).OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.OrdinalIgnoreCase)];

    /// <summary>Whether another resident has the same name: an alert is said.</summary>
    public bool SharesName(Resident resident) => SharingName(resident).Count > 0;

    /// <summary>The others of the same name, or with the same name on the band: whoever opens one of them hears that there is another.</summary>
    public IReadOnlyList<Resident> SharingName(Resident resident) => [.. Residents.Where(r => r.Id != resident.Id && NamesOf(r).Intersect(NamesOf(resident), StringComparer.OrdinalIgnoreCase).Any())];

    /// <summary>Whether day and month of birth tell this resident from all with whom she could be confused: those of her name and those
    /// of her room. Where they don't (twins), the number on band or photo is the second identifier.</summary>
    public bool BirthdayTellsApart(Resident resident) =>
        !Residents.Any(r => r.Id != resident.Id
            && (r.Room == resident.Room || SharingName(resident).Contains(r))
            && (r.Born.Month, r.Born.Day) == (resident.Born.Month, resident.Born.Day));

    /// <summary>Who left that place within the last <see cref="MoveIsNews"/> days and lives elsewhere now.</summary>
    /// <param name="room">The room.</param>
    /// <param name="bed">The bed; null where it was not said.</param>
    /// <param name="day">Today.</param>
    public IReadOnlyList<Resident> MovedFrom(int room, string? bed, DateOnly day) =>
        [.. Residents.Where(r => r.Moved is { } move && move.FromRoom == room && (bed is null || move.FromBed == bed) && IsNews(move, day))];

    /// <summary>Whether a resident came to her place within the last <see cref="MoveIsNews"/> days.</summary>
    public static bool CameLately(Resident resident, DateOnly day) => resident.Moved is { } move && IsNews(move, day);

    /// <summary>How many days a move is said (common practice, no source).</summary>
    public const int MoveIsNews = 7;

    private static bool IsNews(Move move, DateOnly day) => day >= move.On && day.DayNumber - move.On.DayNumber <= MoveIsNews;

    private static IEnumerable<string> NamesOf(Resident resident) => resident.OfficialName is { } official ? [resident.Name, official] : [resident.Name];
}
