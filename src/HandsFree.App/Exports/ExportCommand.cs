using System.CommandLine;
using HandsFree.App.Commands;

namespace HandsFree.App.Exports;

/// <summary>"handsfree export": the record for other systems.</summary>
internal static class ExportCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host) => new("export", "Takes the record, or a part of it, out for another system; it stands in the journal who did it, to where and why")
    {
        ExportCsvCommand.Make(host),
        ExportFhirCommand.Make(host),
    };
}
