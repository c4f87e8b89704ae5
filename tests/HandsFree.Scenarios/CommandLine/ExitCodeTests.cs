using HandsFree.App.Commands;
using HandsFree.App.Composition;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.CommandLine;

public sealed class ExitCodeTests
{
    public static TheoryData<string> Commands =>
        ["", "hear", "handover", "check", "rules", "rules list", "rules show", "rules try", "rules trial", "residents", "residents import", "residents list", "residents show", "journal", "journal list", "journal verify"];

    [Theory]
    [MemberData(nameof(Commands))]
    public void Every_help_page_ends_on_the_exit_codes(string command)
    {
        using TemporaryHome home = new();

        CommandRun run = CommandRun.Of(home, [.. Words(command), "--help"]);

        run.Code.ShouldBe(0);
        run.Error.ShouldBeEmpty();
        run.Out.ShouldContain("Usage:\n  handsfree " + command);
        run.Out.TrimEnd().ShouldEndWith(ExitCodes.Help);
    }

    [Fact]
    public void The_version_is_that_of_the_program()
    {
        using TemporaryHome home = new();

        CommandRun.Of(home, "--version").ShouldBe(new CommandRun(0, "handsfree 0.1.0" + Environment.NewLine, ""));
    }

    [Theory]
    [InlineData("no command is named")]
    [InlineData("'nonsense'", "nonsense")]
    [InlineData("'hear'", "hear")]
    [InlineData("'loud' not recognized", "hear", "a.wav", "--engine", "loud")]
    [InlineData("'breakfast' not recognized", "hear", "a.wav", "--listening-for", "breakfast")]
    [InlineData("--threads must be 1 to 64", "hear", "a.wav", "--threads", "0")]
    [InlineData("'many'", "hear", "a.wav", "--threads", "many")]
    [InlineData("--rechecks must be 0 to 2", "rules", "try", "pulse 72", "--rechecks", "3")]
    [InlineData("'--colour'", "journal", "list", "--colour")]
    [InlineData("--home is empty", "rules", "list", "--home", "")]
    [InlineData("exclude each other", "handover", "--ask", "next", "--ask-audio", "a.wav")]
    public void A_command_line_that_is_wrong_gets_one_line_and_exit_code_2(string says, params string[] args)
    {
        using TemporaryHome home = new();

        CommandRun run = CommandRun.Of(home, args);

        run.Code.ShouldBe(2);
        run.Out.ShouldBeEmpty();
        run.ErrorLines.ShouldHaveSingleItem().ShouldStartWith("handsfree: ");
        run.Error.ShouldContain(says);
    }

    [Fact]
    public void A_bug_is_one_line_with_exit_code_2_and_its_trace_is_in_the_log_without_its_message()
    {
        using TemporaryHome home = InventedHome.New();

        CommandRun run = CommandRun.With(home, s => s with { Out = new BrokenWriter() }, "rules", "list");

        run.Code.ShouldBe(2);
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain(home.Folder.LogFile);
        run.Error.ShouldContain("NotSupportedException");
        run.Error.ShouldNotContain(BrokenWriter.Secret);
        string log = File.ReadAllText(home.Folder.LogFile);
        log.ShouldContain("Bug System.NotSupportedException");
        log.ShouldContain(nameof(BrokenWriter));
        log.ShouldNotContain(BrokenWriter.Secret);
    }

    [Fact]
    public void The_log_holds_kinds_and_durations_and_nothing_of_the_residents()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();

        CommandRun.Of(home, "handover", "--ask", "room twelve").Code.ShouldBe(0);
        CommandRun.Of(home, "handover", "--ask", "Ada Quill").Code.ShouldBe(2);

        File.ReadAllLines(home.Folder.LogFile).ShouldBe(["2026-03-03T16:30:00.000Z Done 0 ms", "2026-03-03T16:30:00.000Z BadInput 0 ms"]);
    }

    [Fact]
    public void The_cautions_are_shown_once_for_each_home_and_only_to_a_person()
    {
        using TemporaryHome home = InventedHome.New();

        CommandRun.Of(home, "rules", "list").Error.ShouldNotContain("not a medical device");
        CommandRun.With(home, s => s with { IsInteractive = true }, "rules", "list").Error.ShouldContain("not a medical device");
        CommandRun.With(home, s => s with { IsInteractive = true }, "rules", "list").Error.ShouldNotContain("not a medical device");
        Cautions.Text.ShouldContain("In an emergency call for help");
    }

    private static string[] Words(string command) => command.Split(' ', StringSplitOptions.RemoveEmptyEntries);
}
