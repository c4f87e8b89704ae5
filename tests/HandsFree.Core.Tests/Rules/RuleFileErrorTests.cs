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
        string[] expected = [.. Lines(name).Where(l => l.StartsWith(Marker, StringComparison.Ordinal)).Select(l => l[Marker.Length..])];

        var loading = Load(Read(name));

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
    public void Every_error_line_says_what_is_wrong_and_what_to_do() =>
        Golden.Match(string.Join('\n', BadFiles().SelectMany(row => Load(Read(row.Data)).Errors)));

    [Fact]
    public void An_error_reads_as_file_line_and_reason() =>
        new FileError("home.json", 7, "\"source\" is missing").ToString().ShouldBe("home.json(7): \"source\" is missing");

    private static string[] Lines(string name) => File.ReadAllLines(Path.Combine(Folder, name));

    private static RuleFile Read(string name) =>
        new(name, string.Join('\n', Lines(name).Where(l => !l.StartsWith(Marker, StringComparison.Ordinal))) + "\n");

    private static RulebookLoading Load(RuleFile file) => file.Name.StartsWith("home-", StringComparison.Ordinal)
        ? Rulebook.Load(file)
        : Rulebook.Load([.. Rulebook.Defaults(), file]);
}
