using HandsFree.Scenarios.CommandLine;
using Shouldly;

namespace HandsFree.Scenarios.Reports;

/// <summary>A home in which a supervisor, a nurse and an aide are set up, and runs in the name of each.</summary>
internal static class People
{
    private static readonly (string Person, string Role, string Pin)[] All =
        [("super-1", "supervisor", "heron lamp 24"), ("nurse-1", "nurse", "quiet boat 58"), ("aide-7", "aide", "719284")];

    /// <summary>Sets the three up.</summary>
    public static TemporaryHome WithPeople(this TemporaryHome home)
    {
        foreach (var (person, role, pin) in All)
        {
            home.With($"{person}.unlock", $"{person} {pin}").With($"{person}.new", pin);
            CommandRun added = Run(home, "super-1", [("HANDSFREE_NEW_PIN_FILE", $"{person}.new")], "people", "add", person, "--role", role);
            added.Code.ShouldBe(0, added.Error);
        }

        return home;
    }

    /// <summary>The environment of one of the three: null for all but her PIN.</summary>
    public static Func<string, string?> Unlocking(this TemporaryHome home, string person) =>
        name => name == "HANDSFREE_PIN_FILE" && File.Exists(home.At($"{person}.unlock")) ? home.At($"{person}.unlock") : null;

    /// <summary>Runs a command as one of the three.</summary>
    public static CommandRun As(this TemporaryHome home, string person, params string[] args) => Run(home, person, [], args);

    /// <summary>Runs a command as one of the three, who types this.</summary>
    public static CommandRun AsTyping(this TemporaryHome home, string person, string input, params string[] args) =>
        CommandRun.With(home, s => s with { In = new StringReader(input), Variable = Variables(home, person, [], s.Variable) }, args);

    private static CommandRun Run(TemporaryHome home, string person, (string Name, string File)[] more, params string[] args) =>
        CommandRun.With(home, s => s with { Variable = Variables(home, person, more, s.Variable) }, args);

    private static Func<string, string?> Variables(TemporaryHome home, string person, (string Name, string File)[] more, Func<string, string?> otherwise) => name =>
        more.FirstOrDefault(m => m.Name == name).File is { } file ? home.At(file)
        : name == "HANDSFREE_PIN_FILE" ? home.At($"{person}.unlock")
        : otherwise(name);
}
