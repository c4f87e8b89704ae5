namespace HandsFree.Core.Residents;

/// <summary>What no roster may have: two residents of one number or in one place, a shared room without beds.</summary>
public static class RosterFaults
{
    /// <summary>Every fault with the index of the resident at whom it is found.</summary>
    /// <param name="residents">The residents, in the order of the file; a room of 0 stands for one that could not be read.</param>
    /// <param name="where">Where the resident of an index stands, in words: "line 3".</param>
    public static IEnumerable<(int Index, string Reason)> Of(IReadOnlyList<Resident> residents, Func<int, string> where) =>
    [
        .. Shared(residents, where, "id", r => r.Id),
        .. Shared(residents, where, "bandNumber", r => r.BandNumber),
        .. Shared(residents, where, "room and bed", r => r.Room > 0 ? Place(r) : null),
        .. residents.Select((r, i) => (Resident: r, Index: i)).Where(r => r.Resident.Room > 0).GroupBy(r => r.Resident.Room).Where(room => room.Count() > 1)
            .SelectMany(room => room.Where(r => r.Resident.Bed is null)
                .Select(r => (r.Index, $"room {room.Key} has {room.Count()} residents, so \"bed\" must be there: a, b, c or d"))),
    ];

    /// <summary>Room and bed in words.</summary>
    public static string Place(Resident resident) => $"room {resident.Room}{(resident.Bed is { } bed ? " bed " + bed : "")}";

    private static IEnumerable<(int Index, string Reason)> Shared(
        IReadOnlyList<Resident> residents, Func<int, string> where, string what, Func<Resident, string?> key)
    {
        Dictionary<string, int> seen = new(StringComparer.Ordinal);
        for (int i = 0; i < residents.Count; i++)
        {
            if (key(residents[i]) is { Length: > 0 } text && !seen.TryAdd(text, i))
            {
                yield return (i, $"\"{text}\" is the {what} of two residents, here and at {where(seen[text])}; each must have their own");
            }
        }
    }
}
