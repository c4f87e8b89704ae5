using HandsFree.Core.Rules;
using HandsFree.TestKit;
using Xunit;

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

    public static Outcome Outcome(string words) => words switch
    {
        "accept" => Core.Rules.Outcome.Accept,
        "report this shift" => Core.Rules.Outcome.ReportThisShift,
        "report now" => Core.Rules.Outcome.ReportNow,
        "ask again" => Core.Rules.Outcome.AskAgain,
        _ => throw new FormatException(words),
    };

    public static IEnumerable<TheoryDataRow<string>> Ids(string name) => Read(name).Select(r => new TheoryDataRow<string>(r["id"]));

    public static IReadOnlyDictionary<string, string> Row(string name, string id) => Read(name).Single(r => r["id"] == id);
}
