using System.CommandLine;
using System.Diagnostics;
using HandsFree.App.Composition;
using HandsFree.App.Homes;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>Runs a command with its services; what every command shares.</summary>
internal sealed class CommandHost(Surroundings surroundings)
{
    /// <summary>The streams, the clock, the environment.</summary>
    public Surroundings Surroundings => surroundings;

    /// <summary>--home, of every command.</summary>
    public Option<string?> Home { get; } = new("--home")
    {
        Description = "The folder with all data of the home (default: HANDSFREE_HOME, else the user's data folder)",
        HelpName = "FOLDER",
        Recursive = true,
    };

    /// <summary>--unlock-fd, of every command.</summary>
    public Option<int?> UnlockDescriptor { get; } = new("--unlock-fd")
    {
        Description = "A file descriptor from which \"PERSON PIN\" is read (else HANDSFREE_PIN_FILE names a file, else the terminal is asked)",
        HelpName = "N",
        Recursive = true,
    };

    /// <summary>--emergency, of every command.</summary>
    public Option<string?> Emergency { get; } = new("--emergency")
    {
        Description = "Opens with the emergency key from its envelope: say who you are and why. It stands in the record, and everybody who opens it afterwards is told",
        HelpName = "WHO AND WHY",
        Recursive = true,
    };

    /// <summary>Makes a command's action.</summary>
    /// <param name="command">Gets the action.</param>
    /// <param name="run">Does the work and returns an exit code of <see cref="ExitCodes"/>.</param>
    public Command Runs(Command command, Func<ParseResult, IServiceProvider, int> run)
    {
        command.SetAction(parsed => Run(parsed, run));
        return command;
    }

    /// <summary>A line on stderr that says what is wrong and what to do.</summary>
    /// <returns>The exit code for bad input or set-up.</returns>
    public int Refuse(string line)
    {
        surroundings.Error.WriteLine($"handsfree: {line}");
        return ExitCodes.BadInput;
    }

    /// <summary>A line on stderr for each error of the home's files.</summary>
    /// <returns>The exit code for bad input or set-up.</returns>
    public int RefuseHome(HomeOpening opening) => RefuseAll(opening.Errors.Select(e => e.ToString()));

    /// <summary>Several lines on stderr.</summary>
    /// <returns>The exit code for bad input or set-up.</returns>
    public int RefuseAll(IEnumerable<string> lines)
    {
        foreach (string line in lines)
        {
            Refuse(line);
        }

        return ExitCodes.BadInput;
    }

    private int Run(ParseResult parsed, Func<ParseResult, IServiceProvider, int> run)
    {
        string? home = parsed.GetValue(Home);
        if (home is not null && string.IsNullOrWhiteSpace(home))
        {
            return Refuse("--home is empty; name a folder");
        }

        long begun = surroundings.Time.GetTimestamp();
        using ServiceProvider services = ServiceMaker.Make(surroundings, home, parsed.GetValue(UnlockDescriptor), parsed.GetValue(Emergency));
        ProgramLog log = services.GetRequiredService<ProgramLog>();
        int code;
        try
        {
            Cautions.ShowOnce(services.GetRequiredService<HomeFolder>(), surroundings);
            code = run(parsed, services);
        }
        catch (Exception bug) when (!Debugger.IsAttached)
        {
            log.Bug(bug);
            return Refuse($"stopped by an error of the program ({bug.GetType().Name}); please report it with the file {log.File}, which holds no personal data");
        }

        LogKind kind = code switch { ExitCodes.Done => LogKind.Done, ExitCodes.CheckFailed => LogKind.CheckFailed, _ => LogKind.BadInput };
        log.Note(kind, surroundings.Time.GetElapsedTime(begun));
        return code;
    }
}
