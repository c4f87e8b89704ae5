using System.Globalization;
using System.Text.RegularExpressions;
using HandsFree.Core.Rules;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Rules;

/// <summary>Changes every number of every threshold in the rule files, one at a time, up and down by a little: each change must be
/// seen by an example or a boundary.</summary>
public partial class ThresholdMutationTests
{
    private static readonly IReadOnlyList<IReadOnlyDictionary<string, string>> Boundaries = Table.Read("boundaries.tsv");

    /// <summary>A 15 second count gives 100 or 104 and nothing between.</summary>
    private static readonly string[] NoDifference = ["pulse.method.15-seconds-fast: 100 to 101"];

    [Fact]
    public void Changing_any_threshold_by_a_step_is_noticed()
    {
        var unseen = new List<string>();
        int changes = 0;
        var files = Rulebook.Defaults();
        foreach (var file in files)
        {
            foreach (Match rule in RuleText().Matches(file.Text))
            {
                if (rule.Value.Contains("\"off\": true", StringComparison.Ordinal))
                {
                    continue;
                }

                foreach (Match number in Thresholds().Matches(rule.Value))
                {
                    foreach (int direction in (int[])[-1, 1])
                    {
                        changes++;
                        var group = number.Groups["n"];
                        string changed = file.Text.Remove(rule.Index + group.Index, group.Length).Insert(rule.Index + group.Index, Moved(group.Value, direction));
                        var rules = TestRules.Loaded(Rulebook.Load([.. files.Where(f => f != file), file with { Text = changed }]));
                        string id = rule.Groups["id"].Value;
                        if (!Boundaries.Any(row => row["rule"] == id && Differs(rules, row)))
                        {
                            unseen.Add($"{id}: {group.Value} to {Moved(group.Value, direction)}");
                        }
                    }
                }
            }
        }

        changes.ShouldBeGreaterThan(150);
        unseen.ShouldBe(NoDifference);
    }

    [Fact]
    public void Changing_any_action_is_noticed()
    {
        var files = Rulebook.Defaults();
        var unseen = new List<string>();
        foreach (var file in files)
        {
            foreach (Match rule in RuleText().Matches(file.Text))
            {
                var action = Action().Match(rule.Value).Groups["a"];
                string other = action.Value == "report this shift" ? "accept" : "report this shift";
                if (!action.Success || rule.Value.Contains("\"danger\": true", StringComparison.Ordinal))
                {
                    continue;
                }

                string changed = file.Text.Remove(rule.Index + action.Index, action.Length).Insert(rule.Index + action.Index, other);
                var rules = TestRules.Loaded(Rulebook.Load([.. files.Where(f => f != file), file with { Text = changed }]));
                string id = rule.Groups["id"].Value;
                if (!Boundaries.Any(row => row["rule"] == id && BoundaryTests.SaidBy(rules, row, "beyond").SingleOrDefault(r => r.Rule == id)?.Outcome != Table.Outcome(row["outcome"])))
                {
                    unseen.Add(id);
                }
            }
        }

        unseen.ShouldBeEmpty();
    }

    private static bool Differs(Rulebook rules, IReadOnlyDictionary<string, string> row) =>
        BoundaryTests.SaidBy(rules, row, "within").Any(r => r.Rule == row["rule"]) || !BoundaryTests.SaidBy(rules, row, "beyond").Any(r => r.Rule == row["rule"]);

    /// <summary>A step is a tenth for numbers with a point and one for whole numbers.</summary>
    private static string Moved(string number, int direction) =>
        (decimal.Parse(number, CultureInfo.InvariantCulture) + direction * (number.Contains('.') ? 0.1m : 1m)).ToString(CultureInfo.InvariantCulture);

    [GeneratedRegex("""\{\s*"id": "(?<id>[^"]+)".*?"mark": "[^"]+"\s*\}""", RegexOptions.Singleline)]
    private static partial Regex RuleText();

    [GeneratedRegex("\"action\": \"(?<a>[^\"]+)\"")]
    private static partial Regex Action();

    [GeneratedRegex("""(?:"(?:above|below|at least|at most|Cel|\[degF\]|at least hours|at most hours)": )(?<n>-?[0-9.]+)""")]
    private static partial Regex Thresholds();
}
