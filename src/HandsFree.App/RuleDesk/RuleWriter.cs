using System.Text.Encodings.Web;
using System.Text.Json;
using HandsFree.App.Composition;
using HandsFree.Core.Rules;

namespace HandsFree.App.RuleDesk;

/// <summary>Rules for a person and for a script.</summary>
internal static class RuleWriter
{
    private static readonly JsonSerializerOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>A rule on one line.</summary>
    public static string Line(RuleListing rule) =>
        $"{rule.Id}: {rule.Threshold}{(rule.Conditions.Length > 0 ? ", " + rule.Conditions : "")} -> {EnumWords.Of(rule.Outcome)}{(rule.Recheck is null ? "" : ", recheck first")}"
        + (rule.InForce ? "" : " (not in force)");

    /// <summary>All of a rule, a line for each field.</summary>
    public static string Page(RuleListing rule)
    {
        (string Name, string? Value)[] fields =
        [
            ("rule", rule.Id),
            ("says", rule.Text),
            ("when", rule.Threshold + (rule.Conditions.Length > 0 ? ", " + rule.Conditions : "")),
            ("decides", EnumWords.Of(rule.Outcome) + (rule.Danger ? ", a danger value" : "")),
            ("recheck first", rule.Recheck),
            ("after rechecks", rule.Afterwards is { } outcome ? EnumWords.Of(outcome) : null),
            ("stands as", $"{EnumWords.Of(rule.Authority)}, {rule.Group}"),
            ("source", $"{rule.Source} ({EnumWords.Of(rule.Mark)})"),
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
            outcome = EnumWords.Of(rule.Outcome),
            danger = rule.Danger,
            recheck = rule.Recheck,
            afterwards = rule.Afterwards is { } outcome ? EnumWords.Of(outcome) : null,
            authority = EnumWords.Of(rule.Authority),
            source = rule.Source,
            mark = EnumWords.Of(rule.Mark),
            inForce = rule.InForce,
            changed = rule.Changed,
        },
        Options);
}
