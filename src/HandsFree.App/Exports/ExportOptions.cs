using System.CommandLine;

namespace HandsFree.App.Exports;

/// <summary>What every export is given.</summary>
internal sealed class ExportOptions
{
    /// <summary>Why.</summary>
    public Option<string> Because { get; } = new("--because") { Description = "Why the record is taken out; it stands in the journal", HelpName = "TEXT", Required = true };

    /// <summary>Of one unit alone.</summary>
    public Option<string?> Unit { get; } = new("--unit") { Description = "Only of this unit, as the roster names it", HelpName = "NAME" };

    /// <summary>Gives a command these options.</summary>
    public Command AddTo(Command command)
    {
        command.Options.Add(Because);
        command.Options.Add(Unit);
        return command;
    }
}
