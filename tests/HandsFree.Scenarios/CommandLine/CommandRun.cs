using HandsFree.App.Composition;
using Microsoft.Extensions.Time.Testing;

namespace HandsFree.Scenarios.CommandLine;

/// <summary>One run of the program in this process: its exit code and what it wrote.</summary>
internal sealed record CommandRun(int Code, string Out, string Error)
{
    /// <summary>A Tuesday morning in the home, 10:30 in Chicago.</summary>
    public static readonly DateTimeOffset Now = new(2026, 3, 3, 16, 30, 0, TimeSpan.Zero);

    /// <summary>The lines of stdout.</summary>
    public string[] Lines => LinesOf(Out);

    /// <summary>The lines of stderr.</summary>
    public string[] ErrorLines => LinesOf(Error);

    /// <summary>Surroundings in which nobody reads or types.</summary>
    public static Surroundings Quiet => new()
    {
        In = TextReader.Null,
        Out = TextWriter.Null,
        Error = TextWriter.Null,
        Time = TimeProvider.System,
        Variable = _ => null,
    };

    public static CommandRun Of(TemporaryHome home, params string[] args) => With(home, s => s, args);

    public static CommandRun Typing(TemporaryHome home, string input, params string[] args) =>
        With(home, s => s with { In = new StringReader(input) }, args);

    public static CommandRun With(TemporaryHome home, Func<Surroundings, Surroundings> change, params string[] args)
    {
        using StringWriter output = new();
        using StringWriter error = new();
        FakeTimeProvider time = new(Now);
        time.SetLocalTimeZone(TimeZoneInfo.FindSystemTimeZoneById("America/Chicago"));
        Surroundings surroundings = change(new Surroundings
        {
            In = new StringReader(""),
            Out = output,
            Error = error,
            Time = time,
            Variable = name => name == "HANDSFREE_HOME" ? home.Path : name == "HANDSFREE_STATE" ? home.States : Environment.GetEnvironmentVariable(name) is { Length: > 0 } value ? value : null,
        });
        int code = App.Commands.CommandLine.Run(args, surroundings);
        return new CommandRun(code, output.ToString(), error.ToString());
    }

    private static string[] LinesOf(string text) => text.ReplaceLineEndings("\n").Split('\n', StringSplitOptions.RemoveEmptyEntries);
}
