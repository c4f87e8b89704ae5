using System.CommandLine;

namespace HandsFree.App.Commands;

/// <summary>"handsfree residents": who lives in the home.</summary>
internal static class ResidentsCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host) =>
        new("residents", "Imports, lists and shows the residents of the home")
        {
            ResidentsImportCommand.Make(host), ResidentsListCommand.Make(host), ResidentsShowCommand.Make(host),
        };
}
