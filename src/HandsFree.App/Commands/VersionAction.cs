using System.CommandLine;
using System.CommandLine.Invocation;
using System.Reflection;

namespace HandsFree.App.Commands;

/// <summary>Says which version of the program this is, whatever started it.</summary>
internal sealed class VersionAction : SynchronousCommandLineAction
{
    /// <summary>Such as "0.1.0".</summary>
    public static string Version { get; } =
        typeof(VersionAction).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion.Split('+')[0];

    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        parseResult.InvocationConfiguration.Output.WriteLine($"handsfree {Version}");
        return ExitCodes.Done;
    }
}
