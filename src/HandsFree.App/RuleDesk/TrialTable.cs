using System.Globalization;
using System.Text.Json;
using HandsFree.Core.Rules.Trials;

namespace HandsFree.App.RuleDesk;

/// <summary>What two rulebooks would have made of the same past readings, rule by rule, for 100 sets.</summary>
/// <param name="present">The rules in force.</param>
/// <param name="changed">The changed ones; null where none were named.</param>
internal sealed class TrialTable(RuleTrial present, RuleTrial? changed)
{
    private const string Everything = "all together";

    /// <summary>A table for a person: the present rules, and after an arrow the changed ones where they differ.</summary>
    public IEnumerable<string> Lines()
    {
        yield return string.Create(CultureInfo.InvariantCulture, $"{present.Sets} sets, {present.Readings} readings; for 100 sets{(changed is null ? "" : ", present rules -> changed rules")}:");
        List<string[]> rows = [["", "rechecks", "this shift", "now", "asked again"], Row(Everything, present.All, changed?.All), .. Rules().Select(r => Row(r.Rule, r.Present, r.Changed))];
        int[] widths = [.. Enumerable.Range(0, 5).Select(i => rows.Max(r => r[i].Length))];
        foreach (string[] row in rows)
        {
            yield return string.Join("  ", row.Select((cell, i) => i == 0 ? cell.PadRight(widths[i]) : cell.PadLeft(widths[i]))).TrimEnd();
        }

        yield return "What several rules ask for counts for each of them and once all together. A report that waits for a recheck is decided by the recheck; where that is not among the readings, it counts as both.";
    }

    /// <summary>One JSON object.</summary>
    public string Json() => JsonSerializer.Serialize(new
    {
        sets = present.Sets,
        readings = present.Readings,
        all = Compared(present.All, changed?.All),
        rules = Rules().Select(r => new { rule = r.Rule, present = For100(r.Present), changed = r.Changed is { } c ? For100(c) : null }),
    });

    private IEnumerable<(string Rule, RuleCount Present, RuleCount? Changed)> Rules() => present.Rules.Keys.Union(changed?.Rules.Keys ?? [])
        .Select(rule => (rule, present.Rules.GetValueOrDefault(rule, RuleCount.None), changed?.Rules.GetValueOrDefault(rule, RuleCount.None)))
        .OrderByDescending(r => Weight(r.Item2) + (r.Item3 is { } c ? Weight(c) : 0)).ThenBy(r => r.rule, StringComparer.Ordinal);

    private static int Weight(RuleCount count) => count.ReportsNow + count.ReportsThisShift + count.Rechecks + count.AskedAgain;

    private object Compared(RuleCount before, RuleCount? after) => new { present = For100(before), changed = after is null ? null : For100(after) };

    private object For100(RuleCount count) => new
    {
        rechecks = Per100(count.Rechecks),
        reportsThisShift = Per100(count.ReportsThisShift),
        reportsNow = Per100(count.ReportsNow),
        askedAgain = Per100(count.AskedAgain),
    };

    private string[] Row(string name, RuleCount before, RuleCount? after)
    {
        string Cell(Func<RuleCount, int> of)
        {
            string then = Per100(of(before)).ToString("0.#", CultureInfo.InvariantCulture);
            return after is null || of(after) == of(before) ? then : $"{then} -> {Per100(of(after)).ToString("0.#", CultureInfo.InvariantCulture)}";
        }

        return [name, Cell(c => c.Rechecks), Cell(c => c.ReportsThisShift), Cell(c => c.ReportsNow), Cell(c => c.AskedAgain)];
    }

    private decimal Per100(int count) => present.Sets == 0 ? 0 : decimal.Round(100m * count / present.Sets, 2);
}
