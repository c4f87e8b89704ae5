using System.Text;

namespace HandsFree.App.Composition;

/// <summary>What surrounds a run of the program: its streams, its clock, the environment. Tests bring their own.</summary>
internal sealed record Surroundings
{
    /// <summary>What is typed, or piped in.</summary>
    public required TextReader In { get; init; }

    /// <summary>What was asked for.</summary>
    public required TextWriter Out { get; init; }

    /// <summary>What is wrong and what to do, and remarks beside JSON.</summary>
    public required TextWriter Error { get; init; }

    /// <summary>The clock.</summary>
    public required TimeProvider Time { get; init; }

    /// <summary>An environment variable, or null where it is not set or empty.</summary>
    public required Func<string, string?> Variable { get; init; }

    /// <summary>Whether a person sits at a terminal: input and output are not redirected.</summary>
    public bool IsInteractive { get; init; }

    /// <summary>Reads what must not be shown, such as a PIN; null where nobody can type it.</summary>
    public Func<string?>? ReadHidden { get; init; }

    /// <summary>Where the program's own files lie (grammars).</summary>
    public string ProgramFolder { get; init; } = AppContext.BaseDirectory;

    /// <summary>The device's name, for pages that say whose record they are.</summary>
    public string DeviceName { get; init; } = Environment.MachineName;

    /// <summary>Those of the process. Text is UTF-8 whatever the terminal's own is, a line at a time.</summary>
    public static Surroundings OfThisProcess()
    {
        UTF8Encoding utf8 = new(encoderShouldEmitUTF8Identifier: false);
        return new Surroundings
        {
            In = Console.In,
            Out = new StreamWriter(Console.OpenStandardOutput(), utf8) { AutoFlush = true, NewLine = Environment.NewLine },
            Error = new StreamWriter(Console.OpenStandardError(), utf8) { AutoFlush = true, NewLine = Environment.NewLine },
            Time = TimeProvider.System,
            Variable = name => Environment.GetEnvironmentVariable(name) is { Length: > 0 } value ? value : null,
            IsInteractive = !Console.IsInputRedirected && !Console.IsOutputRedirected,
            ReadHidden = Console.IsInputRedirected ? null : Unlocking.HiddenLine.Read,
        };
    }
}
