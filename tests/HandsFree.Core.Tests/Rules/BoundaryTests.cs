using HandsFree.Core.Rules;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Rules;

public class BoundaryTests
{
    private const string File = "boundaries.tsv";

    public static IEnumerable<TheoryDataRow<string>> Boundaries() => Table.Ids(File);

    [Theory]
    [MemberData(nameof(Boundaries))]
    public void A_rule_is_silent_within_its_threshold_and_speaks_beyond(string id)
    {
        var row = Table.Row(File, id);

        SaidBy(TestRules.Defaults, row, "within").ShouldNotContain(r => r.Rule == row["rule"]);
        SaidBy(TestRules.Defaults, row, "beyond").Single(r => r.Rule == row["rule"]).Outcome.ShouldBe(Table.Outcome(row["outcome"]));
    }

    /// <summary>The rules that spoke; earlier readings or symptoms parted by || are those of "within" and those of "beyond".</summary>
    internal static IReadOnlyList<Reason> SaidBy(Rulebook rules, IReadOnlyDictionary<string, string> row, string which)
    {
        var context = Notation.Context(row["resident"], Part("earlier"), Part("symptoms"));
        return rules.Decide(Notation.Reading(row[which]), context).Reasons;

        string Part(string column) => row[column].Split("||")[which == "within" ? 0 : ^1];
    }
}
