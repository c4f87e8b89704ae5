using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using HandsFree.Core.Rules.Evaluation;

namespace HandsFree.Core.Rules.Files;

/// <summary>The content of the rules in one canonical form: what decides changes it, white space and order of files do not.</summary>
internal static class RuleContent
{
    public static string Hash(IEnumerable<Rule> rules) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(Text(rules))));

    private static string Text(IEnumerable<Rule> rules)
    {
        var text = new StringBuilder();
        foreach (var rule in rules.OrderBy(r => r.Id, StringComparer.Ordinal))
        {
            string[] fields =
            [
                rule.Id, rule.Text, rule.Group, $"{rule.Authority}", Test(rule.Test), RuleWords.Conditions(rule.When), $"{rule.Action}",
                $"{rule.Afterwards}", Recheck(rule.Recheck), $"{rule.Danger}", $"{rule.Set}", $"{rule.StaysBesideHomeLimits}", $"{rule.BeyondPlans}", $"{rule.Fixed}", $"{rule.Priority}", rule.Source,
                $"{rule.Mark}", $"{rule.Off}", rule.Changed ?? "",
                string.Join('|', rule.When.Tests.Select(Test)),
            ];
            text.AppendJoin('\u001F', fields).Append('\n');
        }

        return text.ToString();
    }

    private static string Test(RuleTest test) => string.Create(
        CultureInfo.InvariantCulture,
        $"{test.Of.Name},{test.Side},{test.Number:0.######},{test.Celsius:0.######},{test.Ordered},{test.Earlier?.AtLeast},{test.Earlier?.AtMost}");

    private static string Recheck(RuleRecheck? recheck) => recheck is null
        ? ""
        : $"{recheck.Instruction.Id},{recheck.Instruction.Say},{recheck.Instruction.After},{recheck.Times},{recheck.UnlessCounted60},{recheck.WaitForRest}";
}
