using HandsFree.Scenarios.CommandLine;
using HandsFree.Scenarios.Demo;
using HandsFree.TestKit;
using Microsoft.Extensions.Time.Testing;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Reports;

/// <summary>A pressure that must be reported, from the recordings of it to the closed report, the program ended after every step.</summary>
public sealed class FromAudioToReportTests
{
    private DateTimeOffset later = CommandRun.Now.AddHours(1);

    [Fact]
    public void A_pressure_that_was_spoken_is_reported_told_acknowledged_and_closed_over_restarts()
    {
        using TemporaryHome home = new();
        using ShortShift shift = new("105");
        CommandRun round = CommandRun.With(
            home, s => s with { Variable = name => name == "HANDSFREE_ROOT" ? shift.Root : s.Variable(name) },
            "demo", "--fast", "--home", home.At("made-up"));
        round.Code.ShouldBe(0, round.Out + round.Error);

        string list = Run(home, "demo", "report", "list").Lines.ShouldHaveSingleItem();
        list.ShouldContain("room 26: open, report this shift, blood pressure 187/86 mmHg, then 198/72 mmHg");
        home.With("nurse.unlock", "nurse-1 quiet boat 58").With("nurse.new", "quiet boat 58");
        Run(home, "demo", "people", "add", "nurse-1", "--role", "nurse").Code.ShouldBe(0);

        Run(home, "demo", "report", "told", "26").Code.ShouldBe(0);
        Run(home, "demo", "handover", "--ask", "open reports").Out.ShouldContain("nurse told at");
        Run(home, "nurse", "report", "acknowledge", "26", "--advised", "measure again at six", "--read-back").Code.ShouldBe(0);
        Run(home, "nurse", "handover", "--ask", "open reports").Out.ShouldStartWith("No open reports.");
        Run(home, "nurse", "report", "close", "26", "--outcome", "168 over 84, as usual").Code.ShouldBe(0);

        string sheet = Run(home, "nurse", "report", "show", list.Split(' ')[0]).Out;
        sheet.ShouldContain("187/86 mmHg");
        sheet.ShouldContain("198/72 mmHg");
        sheet.ShouldContain("usual upper pressure 168 and usual lower pressure 84");
        sheet.ShouldContain("Advised by nurse-1, read back: measure again at six");
        sheet.ShouldContain("closed by nurse-1: 168 over 84, as usual");
        CommandRun verify = Run(home, "nurse", "journal", "verify");
        verify.Code.ShouldBe(0, verify.Out + verify.Error);
    }

    private CommandRun Run(TemporaryHome home, string who, params string[] args) => CommandRun.With(
        home,
        s => s with
        {
            Time = new FakeTimeProvider(later = later.AddMinutes(3)),
            Variable = name => name switch
            {
                "HANDSFREE_HOME" => home.At("made-up"),
                "HANDSFREE_PIN_FILE" => who == "demo" ? Path.Combine(home.At("made-up"), "demo.pin") : home.At($"{who}.unlock"),
                "HANDSFREE_NEW_PIN_FILE" => home.At("nurse.new"),
                _ => s.Variable(name),
            },
        },
        args);
}
