using HandsFree.App.Homes;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;

namespace HandsFree.Benchmarks.Dictations.Playing;

/// <summary>The home of the simulated rounds; all people in it are invented.</summary>
internal static class InventedHome
{
    /// <summary>Its residents.</summary>
    public static Roster Roster { get; } = new(
    [
        new() { Id = "1", Name = "Ada Quill", Room = 12, Bed = "b", Born = new(1938, 3, 4) },
        new() { Id = "2", Name = "Bo Larkin", Room = 7, Born = new(1940, 11, 30) },
        new() { Id = "3", Name = "Cy Marsh", Room = 118, Bed = "a", Born = new(1931, 1, 9) },
        new() { Id = "4", Name = "Dora Finch", Room = 24, Bed = "c", Born = new(1935, 8, 22) },
        new() { Id = "5", Name = "Emil Sand", Room = 15, Born = new(1944, 5, 13) },
        new() { Id = "6", Name = "Flora Gant", Room = 50, Bed = "a", Born = new(1929, 10, 15) },
    ]);

    /// <summary>The home in a folder.</summary>
    public static Home In(string folder) =>
        new(new HomeFolder(folder, Path.Combine(folder, "state")), new HomeSettings { TimeZone = TimeZoneInfo.Utc }, Roster, Rulebook.Load().Rulebook!);
}
