using HandsFree.App.Homes;
using HandsFree.App.Screens;
using HandsFree.App.Session;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Reports;
using HandsFree.Scenarios.CommandLine;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Attacks;

/// <summary>The attack: a record that was written by another program, so that texts that steer are in it already. They must stop at the
/// door: terminal, screen, page.</summary>
public sealed class RecordThatSteersTests
{
    private const string Evil = "Dr \u001b[2J\u202eno\u0007body";

    [Theory]
    [InlineData("report", "list")]
    [InlineData("report", "show", "s-4")]
    [InlineData("journal", "list")]
    [InlineData("journal", "list", "--json")]
    [InlineData("handover", "--ask", "open reports")]
    [InlineData("handover", "--ask", "details")]
    public void No_command_writes_it_to_the_terminal_as_it_is(params string[] command)
    {
        using TemporaryHome home = Attacked();

        CommandRun run = CommandRun.Of(home, command);

        Steering.Steers(run.Out + run.Error).ShouldBeFalse();
    }

    [Theory]
    [InlineData("page.html", "handover", "--page")]
    [InlineData("report.html", "report", "print", "s-4", "--html", "--out")]
    [InlineData("report.txt", "report", "print", "s-4", "--out")]
    public void No_page_holds_it(string file, params string[] command)
    {
        using TemporaryHome home = Attacked();

        CommandRun run = CommandRun.Of(home, [.. command, home.At(file)]);

        run.Code.ShouldBe(0, run.Error);
        Steering.Steers(File.ReadAllText(home.At(file))).ShouldBeFalse();
    }

    [Fact]
    public void The_screen_shows_a_mark_in_its_place()
    {
        using TemporaryHome home = InventedHome.New();
        RoundBoard board = new(Home.Open(home.Folder, TimeZoneInfo.Utc).Home!, []);
        board.Saw(new SessionNote.Shown(CommandRun.Now, new ScreenView($"Room {Evil}", Evil, "", Evil)));
        RoundView view = board.At(CommandRun.Now);

        string screen = string.Join('\n', [.. RoundPage.Round(view, Evil), .. RoundPage.List(Evil, [Evil], "", view, "")]);

        Steering.Steers(screen).ShouldBeFalse();
        screen.ShouldContain("\ufffd");
    }

    private static TemporaryHome Attacked()
    {
        DateTimeOffset at = CommandRun.Now.AddMinutes(-50).ToOffset(TimeSpan.FromHours(-6));
        return InventedHome.AfterTheRound().WithJournal(new ReportTold("s-7", "aide-7", at, "s-4", Told.Nurse, Evil, ToldHow.InPerson, at));
    }
}
