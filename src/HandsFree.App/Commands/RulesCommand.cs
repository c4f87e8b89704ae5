using System.CommandLine;
using HandsFree.App.Homes;

namespace HandsFree.App.Commands;

/// <summary>"handsfree rules": what is accepted, rechecked, reported, and where each rule comes from.</summary>
internal static class RulesCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host) =>
        new("rules", "Lists and explains the rules in force, tries readings on them, and a changed rule file on past readings")
        {
            RulesListCommand.Make(host), RulesShowCommand.Make(host), RulesTryCommand.Make(host), RulesTrialCommand.Make(host),
            HomeFileImport.Make(host, "Puts a rules.json in the place of the home's own rules, for a supervisor; try it first with \"rules trial\"", HomeChange.Rules),
        };
}
