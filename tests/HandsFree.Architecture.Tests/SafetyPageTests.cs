using System.Text.RegularExpressions;
using Shouldly;
using Xunit;

namespace HandsFree.Architecture.Tests;

/// <summary>"(safety 11)" leads somewhere, and what the safety page names exists.</summary>
public sealed partial class SafetyPageTests
{
    private const string Page = "src/HandsFree.Core/Safety/README.md";

    private static string[] Rows => [.. RepositoryFiles.Read(Page).Split('\n').Where(line => Item().IsMatch(line))];

    private static int[] Items => [.. Rows.Select(line => int.Parse(Item().Match(line).Groups[1].Value))];

    [Fact]
    public void The_items_are_numbered_without_a_gap() => Items.ShouldBe(Enumerable.Range(1, Items.Length));

    [Fact]
    public void Every_item_that_code_rules_or_tests_cite_is_on_the_page()
    {
        (string Path, int Item)[] cited = [.. Texts.SelectMany(path => Cited(RepositoryFiles.Read(path)).Select(item => (path, item)))];

        cited.Length.ShouldBeGreaterThan(40);
        cited.Where(each => !Items.Contains(each.Item)).ShouldBeEmpty();
    }

    [Fact]
    public void Every_item_names_its_tests_or_says_what_it_comes_with() =>
        Rows.Where(row => !Cells(row)[3].StartsWith("(comes with", StringComparison.Ordinal))
            .Where(row => !Name().IsMatch(Cells(row)[4]))
            .ShouldBeEmpty();

    [Fact]
    public void Every_test_class_that_the_page_names_exists()
    {
        string[] named = [.. Rows.SelectMany(row => Name().Matches(Cells(row)[4])).Select(match => match.Groups[1].Value).Distinct()];
        string[] classes = [.. Texts.Where(path => path.StartsWith("tests/", StringComparison.Ordinal)).Select(Path.GetFileNameWithoutExtension).OfType<string>()];

        named.Length.ShouldBeGreaterThan(15);
        named.Except(classes).ShouldBeEmpty();
    }

    [Fact]
    public void Every_place_that_the_page_names_exists()
    {
        string[] places = [.. Rows.SelectMany(row => Name().Matches(Cells(row)[3])).Select(match => "src/HandsFree.Core/" + match.Groups[1].Value).Distinct()];

        places.Length.ShouldBeGreaterThan(10);
        places.Where(place => !RepositoryFiles.Text.Any(path => path == place || path == place + ".cs" || path.StartsWith(place + "/", StringComparison.Ordinal)))
            .ShouldBeEmpty();
    }

    [Fact]
    public void A_citation_is_found_in_each_of_its_forms()
    {
        Cited("asked again (safety 11), and (safety 15 to 17)").ShouldBe([11, 15, 17]);
        Cited("this program's safety page, rule 2; safety.md 4; safety rule 19").ShouldBe([2, 4, 19]);
        Cited("the safety page overrides; in safety").ShouldBeEmpty();
    }

    private static IEnumerable<string> Texts =>
        RepositoryFiles.Text.Where(path => path != Page && Path.GetExtension(path) is ".cs" or ".json" or ".tsv");

    private static IEnumerable<int> Cited(string text) =>
        Citation().Matches(text).SelectMany(match => match.Groups[1].Captures.Concat(match.Groups[2].Captures)).Select(capture => int.Parse(capture.Value));

    private static string[] Cells(string row) => [.. row.Trim().Trim('|').Split('|').Select(cell => cell.Trim())];

    [GeneratedRegex(@"^\| (\d+) \|")]
    private static partial Regex Item();

    [GeneratedRegex("`([^`]+)`")]
    private static partial Regex Name();

    [GeneratedRegex(@"safety(?: page,)?(?:\.md)?(?: rule)? (\d+)\b(?: to (\d+))?")]
    private static partial Regex Citation();
}
