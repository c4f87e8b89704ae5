using HandsFree.Core.Files;
using HandsFree.Core.Rules;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Rules;

public class RuleFileErrorTests
{
    private const string Marker = "// expected ";
    private static readonly string Folder = Path.Combine(Shared.Repository, "tests", "HandsFree.Core.Tests", "Rules", "BadFiles");

    public static IEnumerable<TheoryDataRow<string>> BadFiles() =>
        Directory.GetFiles(Folder, "*.json").Order(StringComparer.Ordinal).Select(f => new TheoryDataRow<string>(Path.GetFileName(f)));

    [Theory]
    [MemberData(nameof(BadFiles))]
    public void A_broken_rule_file_gets_every_error_with_file_line_and_reason(string name)
    {
        string[] lines = File.ReadAllLines(Path.Combine(Folder, name));
        string[] expected = [.. lines.Where(l => l.StartsWith(Marker, StringComparison.Ordinal)).Select(l => l[Marker.Length..])];
        string text = string.Join('\n', lines.Where(l => !l.StartsWith(Marker, StringComparison.Ordinal))) + "\n";

        var loading = Load(new(name, text));

        loading.Rulebook.ShouldBeNull();
        string all = string.Join('\n', loading.Errors);
        loading.Errors.Count.ShouldBe(expected.Length, all);
        loading.Errors.ShouldAllBe(e => e.File == name);
        foreach (string one in expected)
        {
            string[] parts = one.Split(": ", 2);
            loading.Errors.Any(e => e.Line == int.Parse(parts[0]) && e.Reason.Contains(parts[1])).ShouldBeTrue($"{one}\nin\n{all}");
        }
    }

    [Fact]
    public void An_error_reads_as_file_line_and_reason() =>
        new FileError("home.json", 7, "\"source\" is missing").ToString().ShouldBe("home.json(7): \"source\" is missing");

    private static RulebookLoading Load(RuleFile file) => file.Name.StartsWith("home-", StringComparison.Ordinal)
        ? Rulebook.Load(file)
        : Rulebook.Load([.. Rulebook.Defaults(), file]);
}
