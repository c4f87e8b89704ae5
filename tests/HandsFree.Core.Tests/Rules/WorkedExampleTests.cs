using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Rules;

public class WorkedExampleTests
{
    private const string File = "worked-examples.tsv";

    public static IEnumerable<TheoryDataRow<string>> Examples() => Table.Ids(File);

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_worked_example_is_decided_as_its_source_says(string id)
    {
        var row = Table.Row(File, id);

        var decision = TestRules.Defaults.Decide(
            Notation.Reading(row["reading"]),
            Notation.Context(row["resident"], row["earlier"], row["symptoms"], int.Parse(row["rechecks"])));

        string because = $"{row["source"]}; {row["choice"]}; reasons: {string.Join(" | ", decision.Reasons)}";
        decision.Outcome.ShouldBe(Table.Outcome(row["outcome"]), because);
        (decision.Recheck is null ? "-" : $"{decision.Recheck.After.TotalMinutes:0} min").ShouldBe(row["recheck"], because);
        decision.Danger.ShouldBe(row["danger"] == "yes", because);
        row["rules"].Split(';', StringSplitOptions.RemoveEmptyEntries).ShouldBeSubsetOf(decision.Reasons.Select(r => r.Rule), because);
        if (row["rules"].Length == 0)
        {
            decision.Reasons.ShouldBeEmpty(because);
        }
    }

    [Fact]
    public void Every_worked_example_names_its_source() =>
        Table.Read(File).ShouldAllBe(r => r["source"].Length > 0);

    [Fact]
    public void Every_rule_that_is_in_force_is_named_by_a_worked_example_or_a_boundary()
    {
        var named = Table.Read(File).SelectMany(r => r["rules"].Split(';'))
            .Concat(Table.Read("boundaries.tsv").Select(r => r["rule"]))
            .ToHashSet();

        TestRules.Defaults.Describe().Where(r => r.InForce).Select(r => r.Id).Where(id => !named.Contains(id)).ShouldBeEmpty();
    }

    [Fact]
    public void The_index_says_truly_where_each_worked_example_is_tested()
    {
        var index = Table.Read("index-of-worked-examples.tsv");
        index.Select(r => r["id"]).ShouldBeUnique();
        index.Count.ShouldBe(16 + 16 + 20 + 30 + 16 + 12 + 12 + 5 + 14 + 16);
        foreach (var row in index.Where(r => r["where"].Contains('/')))
        {
            string text = System.IO.File.ReadAllText(Path.Combine(TestKit.Shared.Repository, "tests", "HandsFree.Core.Tests", row["where"]));
            string id = row["id"];
            bool there = row["where"].EndsWith(".tsv", StringComparison.Ordinal)
                ? Table.Read(Path.GetFileName(row["where"])).Any(r => r["id"] == id || r["id"].StartsWith(id + " ", StringComparison.Ordinal))
                : text.Contains(id, StringComparison.Ordinal) || NamedInARange(text, id);
            there.ShouldBeTrue($"{id} is not in {row["where"]}");
        }
    }

    /// <summary>"B-01 to B-10" names B-05.</summary>
    private static bool NamedInARange(string text, string id) =>
        System.Text.RegularExpressions.Regex.Matches(text, "([A-Z])-([0-9]{2}) to \\1-([0-9]{2})").Any(m =>
            id[0] == m.Groups[1].Value[0] && string.CompareOrdinal(id[2..], m.Groups[2].Value) >= 0 && string.CompareOrdinal(id[2..], m.Groups[3].Value) <= 0);
}
