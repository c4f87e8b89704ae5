using HandsFree.Scenarios.CommandLine;
using HandsFree.Scenarios.Reports;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Attacks;

/// <summary>Threat 14: an emergency opening that works, is loud, and stands in the record; the audit; a device that retires.</summary>
public sealed class BreakGlassTests : IDisposable
{
    private const string Why = "night nurse from the agency, nobody with a passphrase is here";

    private readonly TemporaryHome home = InventedHome.AfterTheRound().WithPeople();

    public void Dispose() => home.Dispose();

    [Fact]
    public void The_emergency_key_opens_says_so_loudly_and_everybody_is_told_until_a_new_one_is_made()
    {
        home.As("nurse-1", "people", "emergency").Error.ShouldContain("only a supervisor makes an emergency key");
        string paper = home.As("super-1", "people", "emergency").Lines[^1].Trim();

        CommandRun opened = InNeed(paper, Why, "report", "list");
        opened.Code.ShouldBe(0, opened.Error);
        opened.Error.ShouldContain("OPENED WITH THE EMERGENCY KEY");

        home.As("aide-7", "residents", "list").Error.ShouldContain($"was opened with the emergency key on 2026-03-03 16:30Z: {Why}");
        home.As("super-1", "journal", "audit").Out.ShouldContain($"The record was opened with the emergency key: {Why}");
        home.As("super-1", "people", "emergency").Code.ShouldBe(0);
        home.As("aide-7", "residents", "list").Error.ShouldBeEmpty();
        InNeed(paper, Why, "report", "list").Error.ShouldContain("this is not its emergency key");
    }

    [Fact]
    public void Without_a_reason_it_does_not_open_and_it_changes_nobody_s_PIN()
    {
        string paper = home.As("super-1", "people", "emergency").Lines[^1].Trim();

        InNeed(paper, "me", "report", "list").Error.ShouldContain("says who you are and why");
        InNeed(paper, Why, "people", "remove", "aide-7").Error.ShouldContain("only a supervisor removes people");
        InNeed(paper, Why, "journal", "audit").Error.ShouldContain("only a supervisor looks at the audit");
    }

    [Fact]
    public void The_audit_says_in_words_what_a_supervisor_looks_into()
    {
        home.With("wrong", "aide-7 582046");
        CommandRun.With(home, s => s with { Variable = name => name == "HANDSFREE_PIN_FILE" ? home.At("wrong") : s.Variable(name) }, "report", "list").Code.ShouldBe(2);
        home.As("nurse-1", "residents", "show", "r1").Code.ShouldBe(0);

        home.As("aide-7", "journal", "audit").Error.ShouldContain("only a supervisor looks at the audit");
        CommandRun audit = home.As("super-1", "journal", "audit");

        audit.Code.ShouldBe(0, audit.Error);
        audit.Out.ShouldContain("Somebody tried to open the record and did not: PIN of aide-7.");
        audit.Out.ShouldContain("nurse-1 looked at: residents show r1.");
        audit.Out.ShouldContain("super-1 set nurse-1 up as nurse.");
        audit.Out.ShouldContain("super-1 looked at: journal audit.");
        home.As("super-1", "journal", "audit", "--page", home.At("audit.html")).Code.ShouldBe(0);
        File.ReadAllText(home.At("audit.html")).ShouldContain("nurse-1 looked at: residents show r1.");
        home.As("super-1", "journal", "audit", "--person", "nurse-1").Out.ShouldNotContain("super-1 looked at");
    }

    [Fact]
    public void A_device_that_retires_opens_nothing_any_more_and_the_recovery_key_does_elsewhere()
    {
        string paper = home.As("super-1", "people", "recovery").Lines[^1].Trim();
        home.As("super-1", "journal", "backup", home.At("last.backup")).Code.ShouldBe(0);

        home.As("nurse-1", "journal", "retire", "--because", "sold", "--yes").Error.ShouldContain("only a supervisor retires a device");
        home.As("super-1", "journal", "retire", "--because", "sold", "--yes").Code.ShouldBe(0);

        home.As("super-1", "report", "list").Error.ShouldContain("written on another device");
        home.With("paper", paper).With("fresh", "green field 31");
        CommandRun elsewhere = CommandRun.With(
            home,
            s => s with
            {
                Variable = name => name switch
                {
                    "HANDSFREE_HOME" => home.At("new-home"),
                    "HANDSFREE_STATE" => home.At("new-state"),
                    "HANDSFREE_RECOVERY_FILE" => home.At("paper"),
                    "HANDSFREE_NEW_PIN_FILE" => home.At("fresh"),
                    _ => s.Variable(name),
                },
            },
            "journal", "restore", home.At("last.backup"), "--supervisor", "super-2");
        elsewhere.Code.ShouldBe(0, elsewhere.Error);
    }

    private CommandRun InNeed(string paper, string why, params string[] args)
    {
        home.With("envelope", paper);
        return CommandRun.With(home, s => s with { Variable = name => name == "HANDSFREE_EMERGENCY_FILE" ? home.At("envelope") : s.Variable(name) }, [.. args, "--emergency", why]);
    }
}
