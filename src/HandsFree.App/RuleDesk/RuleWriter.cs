using System.Text.Encodings.Web;
using System.Text.Json;
using HandsFree.Core.Rules;

namespace HandsFree.App.RuleDesk;

/// <summary>Rules and decisions for a person and for a script.</summary>
internal static class RuleWriter
{
    private static readonly JsonSerializerOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>A rule on one line.</summary>
    public static string Line(RuleListing rule) =>
        $"{rule.Id}: {rule.Threshold}{(rule.Conditions.Length > 0 ? ", " + rule.Conditions : "")} -> {Word(rule.Outcome)}{(rule.Recheck is null ? "" : ", recheck first")}"
        + (rule.InForce ? "" : " (not in force)");

    /// <summary>All of a rule, a line for each field.</summary>
    public static string Page(RuleListing rule)
    {
        (string Name, string? Value)[] fields =
        [
            ("rule", rule.Id),
            ("says", rule.Text),
            ("when", rule.Threshold + (rule.Conditions.Length > 0 ? ", " + rule.Conditions : "")),
            ("decides", Word(rule.Outcome) + (rule.Danger ? ", a danger value" : "")),
            ("recheck first", rule.Recheck),
            ("after rechecks", rule.Afterwards is { } outcome ? Word(outcome) : null),
            ("stands as", $"{Word(rule.Authority)}, {rule.Group}"),
            ("source", $"{rule.Source} ({Word(rule.Mark)})"),
            ("in force", rule.InForce ? "yes" : "no"),
            ("changed", rule.Changed),
        ];
        return string.Join(Environment.NewLine, fields.Where(field => field.Value is not null).Select(field => $"{field.Name + ":",-16}{field.Value}"));
    }

    /// <summary>A rule as one JSON object on one line.</summary>
    public static string Json(RuleListing rule) => JsonSerializer.Serialize(
        new
        {
            rule = rule.Id,
            text = rule.Text,
            threshold = rule.Threshold,
            conditions = rule.Conditions,
            outcome = Word(rule.Outcome),
            danger = rule.Danger,
            recheck = rule.Recheck,
            afterwards = rule.Afterwards is { } outcome ? Word(outcome) : null,
            authority = Word(rule.Authority),
            source = rule.Source,
            mark = Word(rule.Mark),
            inForce = rule.InForce,
            changed = rule.Changed,
        },
        Options);

    /// <summary>A decision: what it is, then each rule that spoke, with its source.</summary>
    public static string Text(string reading, Decision decision)
    {
        string recheck = decision.Recheck is { } first ? $", after a recheck: {first.Instruction}" : "";
        string[] lines = [.. decision.Reasons.Select(r => $"  {r.Rule} ({Word(r.Outcome)}): {r.Text} [{r.Source}; {Word(r.Mark)}]")];
        return string.Join(
            Environment.NewLine,
            lines.Prepend($"{reading}: {(decision.Danger ? "danger value, use the call light now; " : "")}{Word(decision.Outcome)}{recheck}"));
    }

    /// <summary>A decision as one JSON object on one line.</summary>
    public static string Json(string reading, Decision decision) => JsonSerializer.Serialize(
        new
        {
            reading,
            decision = Word(decision.Outcome),
            recheckFirst = decision.Recheck?.Instruction,
            danger = decision.Danger,
            reasons = decision.Reasons.Select(r => new { rule = r.Rule, text = r.Text, source = r.Source, mark = Word(r.Mark), outcome = Word(r.Outcome) }),
        },
        Options);

    /// <summary>"ReportThisShift" as "report this shift".</summary>
    private static string Word<T>(T value)
        where T : struct, Enum =>
        string.Concat($"{value}".Select((sign, i) => char.IsUpper(sign) ? (i > 0 ? " " : "") + char.ToLowerInvariant(sign) : sign.ToString()));
}
