using System.CommandLine;
using HandsFree.App.Amend;

namespace HandsFree.App.Commands;

/// <summary>"handsfree journal amend": nothing is overwritten; both values stay, with who and why.</summary>
internal static class JournalAmendCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host) => new("amend", "Amends a reading: entered in error, another value, a late entry, another resident's")
    {
        Error(host),
        Correct(host),
        Late(host),
        Move(host),
    };

    private static Command Error(CommandHost host)
    {
        Argument<long> number = Number();
        AmendOptions options = new();
        Command command = new("error", "The reading should never have been; it counts no more") { number };
        return host.Runs(options.AddTo(command), (parsed, services) =>
            AmendDesk.With(services, host, options.Of(parsed), desk => desk.EnteredInError(parsed.GetValue(number))));
    }

    private static Command Correct(CommandHost host)
    {
        Argument<long> number = Number();
        Argument<string> reading = Reading();
        AmendOptions options = new();
        Command command = new("correct", "Another value takes the reading's place") { number, reading };
        return host.Runs(options.AddTo(command), (parsed, services) =>
            AmendDesk.With(services, host, options.Of(parsed), desk => desk.Correct(parsed.GetValue(number), parsed.GetValue(reading)!)));
    }

    private static Command Late(CommandHost host)
    {
        Argument<string> resident = new("RESIDENT") { Description = "The resident's id in roster.json" };
        Argument<string> reading = Reading();
        Option<string> measured = new("--measured")
        {
            Description = "When it was measured: 07:30, or 2026-01-31T07:30",
            HelpName = "TIME",
            Required = true,
        };
        Option<string?> by = new("--by") { Description = "Who measured it (default: who enters it)", HelpName = "PERSON" };
        AmendOptions options = new();
        Command command = new("late", "A value measured earlier is entered now and marked as a late entry") { resident, reading, measured, by };
        return host.Runs(options.AddTo(command), (parsed, services) => AmendDesk.With(
            services,
            host,
            options.Of(parsed),
            desk => desk.Late(parsed.GetValue(resident)!, parsed.GetValue(reading)!, parsed.GetValue(measured)!, parsed.GetValue(by))));
    }

    private static Command Move(CommandHost host)
    {
        Argument<long> number = Number();
        Argument<string> resident = new("RESIDENT") { Description = "The id of the resident whose reading it is" };
        AmendOptions options = new();
        Command command = new("move", "The reading is another resident's; both ends are marked") { number, resident };
        return host.Runs(options.AddTo(command), (parsed, services) =>
            AmendDesk.With(services, host, options.Of(parsed), desk => desk.Move(parsed.GetValue(number), parsed.GetValue(resident)!)));
    }

    private static Argument<long> Number() => new("NUMBER") { Description = "The event's number, as \"handsfree journal list\" shows it" };

    private static Argument<string> Reading() => new("READING") { Description = "The right reading: \"pulse 82\", \"blood pressure 118/76\"" };
}
