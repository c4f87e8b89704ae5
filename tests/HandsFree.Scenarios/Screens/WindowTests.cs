using HandsFree.App.Homes;
using HandsFree.App.Screens;
using HandsFree.App.Session;
using HandsFree.Core.Dialogue;
using HandsFree.Scenarios.CommandLine;
using Microsoft.Extensions.Time.Testing;
using Shouldly;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using Terminal.Gui.Time;
using Xunit;

namespace HandsFree.Scenarios.Screens;

/// <summary>The real screen without a terminal: keys go in, text comes out, time is injected.</summary>
public sealed class WindowTests : IDisposable, IRoundKeys
{
    private readonly TemporaryHome folder = InventedHome.New();
    private readonly FakeTimeProvider time = new(CommandRun.Now);
    private readonly RoundBoard board;
    private readonly IApplication application;
    private readonly RoundWindow window;
    private readonly SessionToken? session;
    private readonly List<string> said = [];

    public WindowTests()
    {
        board = new RoundBoard(Home.Open(folder.Folder, TimeZoneInfo.Utc).Home!, []);
        application = Application.Create(new VirtualTimeProvider());
        application.Init(DriverRegistry.Names.ANSI);
        application.Driver!.SetScreenSize(RoundPage.Columns, RoundPage.Rows);
        window = new RoundWindow(board, new RoundKeyboard(this, Key.F9), time);
        session = application.Begin(window);
    }

    public void Dispose()
    {
        application.End(session!);
        window.Dispose();
        application.Dispose();
        folder.Dispose();
    }

    void IRoundKeys.Type(string text) => said.Add(text);

    void IRoundKeys.Talk() => said.Add("(key)");

    void IRoundKeys.Leave() => said.Add("(leave)");

    [Fact]
    public void What_is_typed_is_seen_and_said_with_enter()
    {
        Press("Pulse 72");
        Screen().ShouldContain("> Pulse 72_");
        application.InjectKey(Key.Enter);

        said.ShouldBe(["pulse 72"]);
        Screen().ShouldNotContain("Pulse 72");
    }

    [Fact]
    public void An_empty_line_says_nothing_and_the_space_bar_is_the_microphones_key()
    {
        application.InjectKey(Key.Enter);
        application.InjectKey(Key.Space);
        application.InjectKey(Key.F9);
        Press("no");
        application.InjectKey(Key.Backspace);
        application.InjectKey(Key.Esc);
        application.InjectKey(Key.F5);
        application.InjectKey(Key.Q.WithCtrl);

        said.ShouldBe(["(key)", "(key)", "stop", "repeat", "(leave)"]);
    }

    [Fact]
    public void A_value_is_drawn_and_gone_after_five_seconds()
    {
        board.Saw(new SessionNote.Shown(time.GetUtcNow(), new ScreenView("Room 12 bed B", "pulse, per minute", "72", "yes or no")));
        Screen().ShouldContain("█████████");
        Screen().ShouldContain("pulse, per minute");
        time.Advance(TimeSpan.FromSeconds(5.1));
        Screen().ShouldNotContain("█");
        Screen().ShouldContain("Room 12 bed B");
    }

    [Fact]
    public void Lists_are_put_away_when_nobody_presses_a_key()
    {
        application.InjectKey(Key.F2);
        Screen().ShouldContain("Due in this round");
        application.InjectKey(Key.F3);
        Screen().ShouldContain("No report is open.");
        application.InjectKey(Key.F1);
        Screen().ShouldContain("Say it, or type it");
        time.Advance(TimeSpan.FromSeconds(31));
        Screen().ShouldNotContain("Say it, or type it");
    }

    [Fact]
    public void While_locked_no_list_is_shown_and_what_is_typed_is_hidden()
    {
        board.Saw(new SessionNote.Shown(time.GetUtcNow(), new ScreenView("", "", "", "locked: type your PIN")));
        application.InjectKey(Key.F2);
        Press("aide 1234");

        Screen().ShouldContain("> *********_");
        Screen().ShouldNotContain("Due in this round");
        Screen().ShouldNotContain("Room");
    }

    private void Press(string text)
    {
        foreach (char letter in text)
        {
            application.InjectKey(new Key(letter));
        }
    }

    private string Screen()
    {
        window.Refresh();
        application.LayoutAndDraw(false);
        return application.Driver!.ToString()!;
    }
}
