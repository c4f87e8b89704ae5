using System.CommandLine;
using HandsFree.App.Homes;
using HandsFree.App.RuleDesk;
using HandsFree.Core.Rules;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>"handsfree rules show": one rule with its source.</summary>
internal static class RulesShowCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        Argument<string> id = new("ID") { Description = "The rule's id, as \"rules list\" names it" };
        Option<bool> json = new("--json") { Description = "One JSON object" };
        Command command = new("show", "Shows one rule with its source") { id, json };
        return host.Runs(command, (parsed, services) =>
        {
            HomeOpening opening = services.GetRequiredService<HomeOpening>();
            if (!opening.TryGet(out Home? home))
            {
                return host.RefuseHome(opening);
            }

            string wanted = parsed.GetValue(id)!;
            RuleListing? rule = home.Rules.Describe().FirstOrDefault(each => string.Equals(each.Id, wanted, StringComparison.OrdinalIgnoreCase));
            if (rule is null)
            {
                return host.Refuse($"there is no rule \"{wanted}\"; handsfree rules list names them all");
            }

            host.Surroundings.Out.WriteLine(parsed.GetValue(json) ? RuleWriter.Json(rule) : RuleWriter.Page(rule));
            return ExitCodes.Done;
        });
    }
}
