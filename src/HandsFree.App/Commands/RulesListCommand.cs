using System.CommandLine;
using HandsFree.App.Homes;
using HandsFree.App.RuleDesk;
using HandsFree.Core.Rules;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>"handsfree rules list": every rule in the order in which it is asked.</summary>
internal static class RulesListCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        Option<bool> json = new("--json") { Description = "One JSON object a line for each rule" };
        Command command = new("list", "Lists every rule, in the order in which they are asked") { json };
        return host.Runs(command, (parsed, services) =>
        {
            HomeOpening opening = services.GetRequiredService<HomeOpening>();
            if (!opening.TryGet(out Home? home))
            {
                return host.RefuseHome(opening);
            }

            foreach (RuleListing rule in home.Rules.Describe())
            {
                host.Surroundings.Out.WriteLine(parsed.GetValue(json) ? RuleWriter.Json(rule) : RuleWriter.Line(rule));
            }

            return ExitCodes.Done;
        });
    }
}
