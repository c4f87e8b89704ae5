using System.CommandLine;
using HandsFree.App.Homes;

namespace HandsFree.App.Commands;

/// <summary>"handsfree settings": how the home works.</summary>
internal static class SettingsCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host) =>
        new("settings", "How the home works")
        {
            HomeFileImport.Make(host, "Puts a home.json in the place of the settings in force, for a supervisor", HomeChange.Settings),
        };
}
