using HandsFree.TestKit;

namespace HandsFree.Core.Tests.Rules;

/// <summary>A tab-separated file beside the tests: a header, lines of cells, comments after #.</summary>
internal static class Table
{
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Read(string name)
    {
        string path = Path.Combine(Shared.Repository, "tests", "HandsFree.Core.Tests", "Rules", name);
        string[][] lines = [.. File.ReadAllLines(path).Where(l => l.Length > 0 && l[0] != '#').Select(l => l.Split('\t'))];
        string[] header = lines[0];
        return
        [
            .. lines.Skip(1).Select(cells => cells.Length == header.Length
                ? header.Zip(cells).ToDictionary(c => c.First, c => c.Second.Trim())
                : throw new FormatException($"{name}: {cells.Length} cells instead of {header.Length} in {string.Join('|', cells)}")),
        ];
    }

    public static IEnumerable<Xunit.TheoryDataRow<string>> Ids(string name) => Read(name).Select(r => new Xunit.TheoryDataRow<string>(r["id"]));

    public static IReadOnlyDictionary<string, string> Row(string name, string id) => Read(name).Single(r => r["id"] == id);
}
