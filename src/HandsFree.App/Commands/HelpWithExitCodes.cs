using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace HandsFree.App.Commands;

/// <summary>The help pages, with the exit codes at their end.</summary>
internal sealed class HelpWithExitCodes(HelpAction help) : SynchronousCommandLineAction
{
    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        int code = help.Invoke(parseResult);
        parseResult.InvocationConfiguration.Output.WriteLine(ExitCodes.Help);
        return code;
    }
}
