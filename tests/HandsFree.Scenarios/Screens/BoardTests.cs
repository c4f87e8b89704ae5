using HandsFree.App.Homes;
using HandsFree.App.Screens;
using HandsFree.App.Session;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Scenarios.CommandLine;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Screens;

/// <summary>What can be seen of a round, when, and for how long; no terminal.</summary>
public sealed class BoardTests : IDisposable
{
    private readonly TemporaryHome folder = InventedHome.New();
    private readonly RoundBoard board;
    private DateTimeOffset now = TimeZoneInfo.ConvertTime(CommandRun.Now, TimeZoneInfo.FindSystemTimeZoneById("America/Chicago"));

    public BoardTests() => board = new RoundBoard(Home.Open(folder.Folder, TimeZoneInfo.Utc).Home!, []);

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_value_is_seen_for_five_seconds_then_room_and_bed_only()
    {
        ReadBack();
        After(4.9).Digits.ShouldBe("118/76");
        RoundView later = After(0.2);

        (later.Place, later.What, later.Digits, later.Awaited).ShouldBe(("Room 12 bed B", "", "", "yes or no"));
    }

    [Fact]
    public void A_question_about_the_resident_gives_way_to_plain_words()
    {
        Saw(new SessionNote.Shown(now, new ScreenView("Room 12 bed B", "", "", "Short of breath?")));
        Saw(new SessionNote.Listens(now, new Listening(ListeningKind.YesNo)));

        After(1).Awaited.ShouldBe("Short of breath?");
        After(5).Awaited.ShouldBe("yes or no");
    }

    [Fact]
    public void While_locked_nothing_of_a_resident_is_seen()
    {
        Saw(new SessionNote.Kept(now, 1, [new ResidentIdentified("1", "a", now, "r2", SecondIdentifier.BirthDayAndMonth)]));
        ReadBack();
        Saw(new SessionNote.Clock(now, "rest", now.AddMinutes(4)));
        Saw(new SessionNote.Shown(now, new ScreenView("", "", "", "locked: type your PIN")));

        RoundView view = After(0);
        new[] { view.Place, view.What, view.Digits, view.Text, view.Clock, view.Next }.ShouldAllBe(text => text.Length == 0);
        view.IsLocked.ShouldBeTrue();
        board.Due(now).ShouldBeEmpty();
        board.Reports().ShouldBeEmpty();
        view.Awaited.ShouldBe("locked: type your PIN");
        ReadBack();
        After(0).Place.ShouldBe("Room 12 bed B");
    }

    [Fact]
    public void What_is_said_is_written_only_where_nobody_can_hear_it()
    {
        Saw(new SessionNote.Said(now, "Ada Quill? Look first.", null));
        After(0).Text.ShouldBe("");
        Saw(new SessionNote.Said(now, "Ada Quill? Look first.", "no voice"));
        After(0).Text.ShouldBe("Ada Quill? Look first.");
        After(5).Text.ShouldBe("");
    }

    [Fact]
    public void The_microphone_is_seen_as_a_sign_and_in_words()
    {
        List<string> seen = [];
        foreach (SessionNote note in new SessionNote[]
        {
            new SessionNote.Microphone(now, MicrophoneState.Open, null), new SessionNote.Said(now, "Ready.", null), new SessionNote.Quiet(now),
            new SessionNote.Microphone(now, MicrophoneState.Closed, null), new SessionNote.Microphone(now, MicrophoneState.Lost, "gone"),
            new SessionNote.Microphone(now, MicrophoneState.None, null),
        })
        {
            Saw(note);
            seen.Add($"{After(0).Mark} {After(0).Microphone}");
        }

        Golden.Match(string.Join('\n', seen));
    }

    [Fact]
    public void The_clocks_count_down_a_count_before_a_rest()
    {
        Saw(new SessionNote.Clock(now, "rest", now.AddMinutes(5)));
        After(50).Clock.ShouldBe("rest 4:10");
        Saw(new SessionNote.Clock(now, "count", now.AddSeconds(30)));
        After(7).Clock.ShouldBe("count 0:23");
        Saw(new SessionNote.Clock(now, "count", null));
        After(0).Clock.ShouldBe("rest 4:03");
    }

    [Fact]
    public void What_is_due_next_follows_what_was_saved()
    {
        Saw(new SessionNote.Shown(now, new ScreenView("Room 12 bed B", "", "", "readings")));
        After(0).Next.ShouldBe("");
        Saw(new SessionNote.Kept(now, 1, [new ResidentIdentified("1", "a", now, "r2", SecondIdentifier.BirthDayAndMonth)]));
        string first = After(0).Next;
        Saw(new SessionNote.Kept(now, 2, [InventedHome.Pulse("2", "r2", 72, now)]));

        first.ShouldBe("temperature");
        board.Due(now).ShouldContain(line => line.StartsWith("Room 12 bed B", StringComparison.Ordinal) && !line.Contains("pulse", StringComparison.Ordinal));
        board.Due(now).ShouldContain(line => line.StartsWith("Room 3 ", StringComparison.Ordinal) && line.Contains("pulse", StringComparison.Ordinal));
    }

    [Fact]
    public void Open_reports_have_no_value_and_go_when_they_are_acknowledged()
    {
        Saw(new SessionNote.Kept(now, 1, [new ReportOpened("9", "a", now, "r1", Core.Reports.ReportUrgency.Now, VitalSign.Pulse, [], "pulse 136", [])]));
        board.Reports().ShouldBe(["Room 12 bed A  NOW        pulse             since 10:30"]);
        Saw(new SessionNote.Kept(now, 2, [new ReportAcknowledged("10", "n", now, "9")]));
        board.Reports().ShouldBeEmpty();
    }

    private void ReadBack()
    {
        Saw(new SessionNote.Shown(now, new ScreenView("Room 12 bed B", "blood pressure, mmHg", "118/76", "yes or no")));
        Saw(new SessionNote.Listens(now, new Listening(ListeningKind.Confirmation, VitalSign.BloodPressure)));
    }

    private void Saw(SessionNote note) => board.Saw(note);

    private RoundView After(double seconds)
    {
        now += TimeSpan.FromSeconds(seconds);
        return board.At(now);
    }
}
