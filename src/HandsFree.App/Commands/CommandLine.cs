using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Parsing;
using HandsFree.App.Composition;

namespace HandsFree.App.Commands;

/// <summary>The whole command line.</summary>
internal static class CommandLine
{
    /// <summary>Runs the program.</summary>
    /// <param name="args">As typed.</param>
    /// <param name="surroundings">Streams, clock, environment.</param>
    /// <returns>An exit code of <see cref="ExitCodes"/>.</returns>
    public static int Run(IReadOnlyList<string> args, Surroundings surroundings)
    {
        CommandHost host = new(surroundings);
        ParseResult parsed = Root(host).Parse(args);
        if (parsed.Errors.Count > 0)
        {
            string path = string.Join(' ', Path(parsed.CommandResult));
            return host.Refuse($"{string.Join("; ", parsed.Errors.Select(e => e.Message))} ({path} --help says what can be given)");
        }

        return parsed.Invoke(new InvocationConfiguration
        {
            Output = surroundings.Out,
            Error = surroundings.Error,
            EnableDefaultExceptionHandler = false,
        });
    }

    private static RootCommand Root(CommandHost host)
    {
        RootCommand root = new("Hears a resident's vital signs, reads them back, keeps what was confirmed, and hands over.");
        root.Options.Add(host.Home);
        foreach (Command command in CommandList.All(host))
        {
            root.Subcommands.Add(command);
        }

        HelpOption help = root.Options.OfType<HelpOption>().Single();
        help.Action = new HelpWithExitCodes((HelpAction)help.Action!);
        VersionOption version = root.Options.OfType<VersionOption>().Single();
        version.Action = new VersionAction();
        return root;
    }

    private static IEnumerable<string> Path(CommandResult result) =>
        result.Parent is CommandResult parent ? [.. Path(parent), result.Command.Name] : ["handsfree"];
}
