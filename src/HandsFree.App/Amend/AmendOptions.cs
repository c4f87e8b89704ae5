using System.CommandLine;

namespace HandsFree.App.Amend;

/// <summary>What every amendment is given: why, and whether yes was said already.</summary>
internal sealed class AmendOptions
{
    private readonly Option<string> because = new("--because") { Description = "Why; it stands in the record", HelpName = "TEXT", Required = true };
    private readonly Option<bool> yes = new("--yes") { Description = "Don't ask; the line that would be asked is written all the same" };

    public Command AddTo(Command command)
    {
        command.Options.Add(because);
        command.Options.Add(yes);
        return command;
    }

    public (string Because, bool Yes) Of(ParseResult parsed) => (parsed.GetValue(because)!.Trim(), parsed.GetValue(yes));
}
