using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Parsing;
using HandsFree.App.Composition;
using HandsFree.Core.Files;

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
        // Nothing that comes from a record or a file steers the terminal.
        using PlainWriter output = new(surroundings.Out);
        using PlainWriter error = new(surroundings.Error);
        CommandHost host = new(surroundings with { Out = output, Error = error });
        if (args.Select(PlainText.WhyNot).FirstOrDefault(why => why is not null) is { } steers)
        {
            return host.Refuse($"what was typed {steers}");
        }

        ParseResult parsed = Root(host).Parse(args);
        return parsed.Errors.Count > 0 && !(parsed.Action?.ClearsParseErrors ?? false)
            ? host.Refuse($"{Reasons(parsed)} ({string.Join(' ', Path(parsed.CommandResult))} --help says what can be given)")
            : parsed.Invoke(new InvocationConfiguration
            {
                Output = output,
                Error = error,
                EnableDefaultExceptionHandler = false,
            });
    }

    // No RootCommand: that one is called after the process that runs it.
    private static Command Root(CommandHost host)
    {
        Command root = new("handsfree", "Hears a resident's vital signs, reads them back, keeps what was confirmed, and hands over.");
        HelpOption help = new();
        help.Action = new HelpWithExitCodes((HelpAction)help.Action!);
        root.Options.Add(help);
        root.Options.Add(new VersionOption { Action = new VersionAction() });
        root.Options.Add(host.Home);
        root.Options.Add(host.UnlockDescriptor);
        root.Options.Add(host.Emergency);
        foreach (Command command in CommandList.All(host))
        {
            root.Subcommands.Add(command);
        }

        root.SetAction(_ => host.Refuse("no command is named (handsfree --help lists them)"));
        return root;
    }

    /// <summary>What is wrong, on one line.</summary>
    private static string Reasons(ParseResult parsed) => string.Join(
        "; ",
        parsed.Errors.Select(error => string.Join(' ', error.Message.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))).Distinct());

    private static IEnumerable<string> Path(CommandResult result) =>
        result.Parent is CommandResult parent ? [.. Path(parent), result.Command.Name] : [result.Command.Name];
}
