using HandsFree.Core.Dialogue;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;
using HandsFree.Exchange.Readings;
using HandsFree.Exchange.Rosters;
using HandsFree.TestKit;
using Xunit;

namespace HandsFree.Exchange.Tests;

/// <summary>Good and bad files beside the tests, each with what is read of it or what is said about it.</summary>
public sealed class FolderTests
{
    private static readonly TimeZoneInfo Chicago = TimeZoneInfo.FindSystemTimeZoneById("America/Chicago");
    private static readonly RosterUnits Units = new(TemperatureUnit.Fahrenheit, WeightUnit.Pounds);

    public static IEnumerable<TheoryDataRow<string>> Rosters => Files("Rosters");

    public static IEnumerable<TheoryDataRow<string>> Readings => Files("Readings");

    [Theory]
    [MemberData(nameof(Rosters))]
    public void A_roster(string path)
    {
        byte[] content = File.ReadAllBytes(At(path));
        string name = Path.GetFileName(path);
        ImportedRoster read = name.EndsWith(".csv", StringComparison.Ordinal) ? RosterCsv.Read(name, content, Units, Chicago) : RosterFhir.Read(name, content);

        Assert.Equal(path.Contains("Bad", StringComparison.Ordinal), read.Errors.Count > 0);
        Golden.Match(string.Join('\n', read.Residents.Select(Text).Concat(read.Notes).Concat(read.Errors.Select(e => e.ToString()))), name);
    }

    [Theory]
    [MemberData(nameof(Readings))]
    public void A_table_of_readings(string path)
    {
        string name = Path.GetFileName(path);
        var (sets, errors) = ReadingCsv.Read(name, File.ReadAllBytes(At(path)), WeightUnit.Pounds, Chicago);

        Assert.Equal(path.Contains("Bad", StringComparison.Ordinal), errors.Count > 0);
        Golden.Match(string.Join('\n', sets.Select(s => $"{s.Resident} {s.At:O} {string.Join(" | ", s.Readings.Select(ReadBackTexts.Of))} {string.Join(", ", s.Symptoms.Order())}").Concat(errors.Select(e => e.ToString()))), name);
    }

    private static string Text(ImportedResident imported)
    {
        Resident r = imported.Resident;
        string[] parts =
        [
            $"{imported.Where}: {r.Id}, {r.Name} ({r.OfficialName ?? "no other name"}), {RosterFaults.Place(r)}{(r.Unit is { } unit ? $" of {unit}" : "")}, born {r.Born:yyyy-MM-dd}, band {r.BandNumber ?? "none"}",
            .. r.OrderedLimits.Select(l => l.ToString()),
            .. r.ArmsNotToBeUsed.OrderBy(a => a.Key).Select(a => $"not the {a.Key} arm: {a.Value}"),
            .. r.UsualValues.Select(u => u.ToString()),
            $"oxygen {r.UsualOxygen?.ToString() ?? "not said"}; arm {r.ArmCentimetres} cm; devices {string.Join(" / ", r.Devices)}; conditions {string.Join(" / ", r.Conditions)}",
            .. r.Schedule.Select(s => s.ToString()),
            .. r.UsualFrozen.Select(f => f.ToString()),
            $"isolation {r.Isolation ?? "none"}; posture test {r.PostureTest?.ToString() ?? "not ordered"}",
            r.Away?.ToString() ?? "here",
        ];
        return string.Join("\n  ", parts);
    }

    private static IEnumerable<TheoryDataRow<string>> Files(string folder) =>
        new[] { "Good", "Bad" }.SelectMany(kind => Directory.GetFiles(At(Path.Combine(folder, kind))).Order(StringComparer.Ordinal).Select(f => new TheoryDataRow<string>(Path.Combine(folder, kind, Path.GetFileName(f)))));

    private static string At(string path) => Path.Combine(Shared.Repository, "tests", "HandsFree.Exchange.Tests", path);
}
