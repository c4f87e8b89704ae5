using System.CommandLine;

namespace HandsFree.App.Commands;

/// <summary>All commands, in the order of the help page.</summary>
internal static class CommandList
{
    /// <summary>Makes them.</summary>
    public static IEnumerable<Command> All(CommandHost host) =>
    [
        FirstStart.StartCommand.Make(host),
        RoundCommand.Make(host),
        DemoCommand.Make(host),
        DemoClipsCommand.Make(host),
        HearCommand.Make(host),
        HandoverCommand.Make(host),
        TrendCommand.Make(host),
        ReportCommand.Make(host),
        ResidentsCommand.Make(host),
        Exports.ExportCommand.Make(host),
        Imports.ImportCommand.Make(host),
        RulesCommand.Make(host),
        JournalCommand.Make(host),
        PeopleCommand.Make(host),
        SettingsCommand.Make(host),
        CheckCommand.Make(host),
        DevicesCommand.Make(host),
        Help.HelpCommand.Make(host),
    ];
}
