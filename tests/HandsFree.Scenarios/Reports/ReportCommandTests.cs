using System.Text.Json;
using HandsFree.App.Homes;
using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Scenarios.CommandLine;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Reports;

public sealed class ReportCommandTests
{
    private const string Report = "s-4";

    [Fact]
    public void A_report_is_told_acknowledged_planned_and_closed_and_the_record_says_by_whom()
    {
        using TemporaryHome home = InventedHome.AfterTheRound().WithPeople();

        home.As("aide-7", "report", "list").Out.ShouldStartWith("s-4  room 12 bed A: open, OVERDUE, report now, pulse 136 /min, 2026-03-03 09:33");
        home.As("aide-7", "report", "told", "12a", "--who", "nurse-1", "--at", "10:10").Out.ShouldStartWith("Nurse told, saved as event");
        home.As("nurse-1", "report", "list").Out.ShouldContain("told, OVERDUE");
        CommandRun acknowledged = home.AsTyping("nurse-1", "yes\n", "report", "acknowledge", Report, "--advised", "count again in one hour");
        acknowledged.Code.ShouldBe(0, acknowledged.Error);
        acknowledged.Out.ShouldStartWith("Advised: count again in one hour");
        home.As("nurse-1", "report", "told", Report, "--to", "prescriber", "--how", "by-phone").Code.ShouldBe(0);
        home.As("nurse-1", "report", "plan", Report, "--value", "pulse", "--greatest", "140", "--ordered-by", "Dr Example", "--until", "16:00", "--text", "rest in bed").Code.ShouldBe(0);
        home.As("aide-7", "handover", "--ask", "handover").Out.ShouldContain(
            "Room 12 bed A: acknowledged, pulse, one three six, advised: count again in one hour, plan, pulse, at most one four zero until 16:00; not taken yet, temperature, respirations, blood pressure and oxygen.");
        home.As("nurse-1", "report", "close", Report, "--outcome", "pulse as usual").Code.ShouldBe(0);

        home.As("nurse-1", "report", "list").Out.ShouldStartWith("No open reports.");
        home.As("nurse-1", "report", "list", "--all").Out.ShouldContain("closed");
        Golden.Match(home.As("nurse-1", "report", "show", Report).Out);
        string[] list = home.As("super-1", "journal", "list").Lines;
        list.ShouldContain(l => l.Contains("report told: s-4, nurse (nurse-1), in person, by aide-7", StringComparison.Ordinal));
        list.ShouldContain(l => l.Contains("report acknowledged: s-4, by nurse-1, advised and read back: count again in one hour", StringComparison.Ordinal));
        list.ShouldContain(l => l.Contains("plan by nurse-1 for report s-4: pulse 140 or less, until 2026-03-03 16:00, ordered by Dr Example, rest in bed", StringComparison.Ordinal));
        list.ShouldContain(l => l.Contains("report closed: s-4, by nurse-1: pulse as usual", StringComparison.Ordinal));
        list.ShouldContain(l => l.Contains("viewed by aide-7: report list", StringComparison.Ordinal));
        list.ShouldContain(l => l.Contains("viewed by nurse-1: report show s-4", StringComparison.Ordinal));
    }

    [Fact]
    public void A_value_that_must_be_told_and_waits_for_its_recheck_is_on_the_list_of_reports()
    {
        using TemporaryHome home = InventedHome.AtTheChangeOfShift().WithPeople();

        home.As("nurse-1", "report", "list").Lines[1].ShouldBe("t-2  room 14: recheck waits, not done: report this shift, temperature 100.2 °F, 2026-03-03 09:50");
        string json = home.As("nurse-1", "report", "list", "--json").Lines[1];
        JsonDocument.Parse(json).RootElement.GetProperty("state").GetString().ShouldBe("recheck waits");
    }

    [Theory]
    [InlineData("aide-7", "an aide can't", "report", "acknowledge", Report)]
    [InlineData("aide-7", "entered by a nurse", "report", "told", Report, "--to", "family")]
    [InlineData("nurse-1", "no nurse has acknowledged it yet", "report", "close", Report, "--outcome", "fine")]
    [InlineData("nurse-1", "no nurse has acknowledged it yet", "report", "plan", Report, "--value", "pulse", "--greatest", "140", "--until", "16:00")]
    [InlineData("nurse-1", "there is no report \"s-99\"", "report", "acknowledge", "s-99")]
    [InlineData("nurse-1", "no report of room 12 bed B is open", "report", "acknowledge", "12b")]
    [InlineData("nurse-1", "room 90 is not in this home", "report", "acknowledge", "room 90")]
    [InlineData("nurse-1", "room 12 has no bed C", "report", "acknowledge", "12c")]
    [InlineData("nurse-1", "--at is \"soon\"", "report", "told", Report, "--at", "soon")]
    [InlineData("nurse-1", "--at is before the report was opened", "report", "told", Report, "--at", "09:00")]
    [InlineData("nurse-1", "there is no unit \"west\"", "report", "list", "--unit", "west")]
    [InlineData("nurse-1", "not read back", "report", "acknowledge", Report, "--advised", "rest")]
    public void What_may_not_be_is_refused_in_one_line_and_nothing_is_lost(string person, string why, params string[] args)
    {
        using TemporaryHome home = InventedHome.AfterTheRound().WithPeople();

        CommandRun run = home.As(person, args);

        run.Code.ShouldBe(2);
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain(why);
        home.As("nurse-1", "report", "list").Out.ShouldContain("s-4  room 12 bed A: open");
    }

    [Theory]
    [InlineData("has no limit", "--value", "pulse", "--until", "16:00")]
    [InlineData("--least is above --greatest", "--value", "pulse", "--least", "100", "--greatest", "50", "--until", "16:00")]
    [InlineData("--greatest must be a whole number for pulse", "--value", "pulse", "--greatest", "100.5", "--until", "16:00")]
    [InlineData("--until is \"later\"", "--value", "pulse", "--greatest", "140", "--until", "later")]
    [InlineData("--greatest 160 can't be planned: above 150 is reported whatever is planned", "--value", "pulse", "--greatest", "160", "--ordered-by", "Dr Example", "--until", "16:00")]
    [InlineData("--least 39 can't be planned: below 40 is reported whatever is planned", "--value", "pulse", "--least", "39", "--ordered-by", "Dr Example", "--until", "16:00")]
    [InlineData("--greatest 140 is above report-now, 130: who ordered it? Nothing was planned", "--value", "pulse", "--greatest", "140", "--until", "16:00")]
    [InlineData("--least 45 is below report-now, 50: who ordered it?", "--value", "pulse", "--least", "45", "--until", "16:00")]
    [InlineData("the report is on pulse; a plan for upper pressure follows a report on that", "--value", "systolic", "--greatest", "200", "--until", "16:00")]
    [InlineData("not within the next 14 days", "--value", "pulse", "--greatest", "120", "--until", "2026-04-30T10:00")]
    [InlineData("not within the next 14 days", "--value", "pulse", "--greatest", "120", "--until", "2026-03-03T10:00")]
    public void A_plan_that_can_t_be_is_refused(string why, params string[] options)
    {
        using TemporaryHome home = InventedHome.AfterTheRound().WithPeople();
        home.As("nurse-1", "report", "acknowledge", Report).Code.ShouldBe(0);

        CommandRun run = home.As("nurse-1", ["report", "plan", Report, .. options]);

        run.Code.ShouldBe(2);
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain(why);
    }

    [Fact]
    public void A_plan_is_withdrawn_by_a_nurse_with_a_reason_and_an_aide_can_t()
    {
        using TemporaryHome home = InventedHome.AfterTheRound().WithPeople();
        home.As("nurse-1", "report", "acknowledge", Report).Code.ShouldBe(0);
        home.As("nurse-1", "report", "withdraw", Report, "--why", "settled").ErrorLines.ShouldHaveSingleItem().ShouldContain("no plan of it stands");
        home.As("nurse-1", "report", "plan", Report, "--value", "pulse", "--greatest", "140", "--ordered-by", "Dr Example", "--until", "16:00").Code.ShouldBe(0);
        home.As("nurse-1", "handover", "--ask", "handover").Out.ShouldContain("plan, pulse, at most one four zero until 16:00");

        home.As("aide-7", "report", "withdraw", Report, "--why", "settled").ErrorLines.ShouldHaveSingleItem().ShouldContain("an aide can't");
        home.As("nurse-1", "report", "withdraw", Report, "--why", "settled").Out.ShouldContain("Plan pulse 140 or less withdrawn");

        home.As("nurse-1", "handover", "--ask", "handover").Out.ShouldNotContain("plan, pulse");
        home.As("nurse-1", "journal", "list").Out.ShouldContain("withdrawn by nurse-1: settled");
        home.As("nurse-1", "journal", "list").Out.ShouldContain("ordered by Dr Example");
    }

    [Fact]
    public void An_acknowledged_and_a_closed_report_are_not_acknowledged_again()
    {
        using TemporaryHome home = InventedHome.AfterTheRound().WithPeople();
        home.As("nurse-1", "report", "acknowledge", Report).Code.ShouldBe(0);
        home.As("super-1", "report", "acknowledge", Report).ErrorLines.ShouldHaveSingleItem()
            .ShouldContain("it was acknowledged by nurse-1 on 2026-03-03 10:30 already");
        home.As("nurse-1", "report", "close", Report, "--outcome", "fine").Code.ShouldBe(0);

        home.As("super-1", "report", "acknowledge", Report).ErrorLines.ShouldHaveSingleItem().ShouldContain("it was closed by nurse-1 on 2026-03-03 10:30");
        home.As("aide-7", "report", "told", Report).Code.ShouldBe(2);
    }

    [Fact]
    public void Where_nobody_is_set_up_a_report_can_be_told_and_not_acknowledged()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();

        CommandRun.Of(home, "report", "told", Report).Code.ShouldBe(0);
        CommandRun.Of(home, "report", "acknowledge", Report).ErrorLines.ShouldHaveSingleItem().ShouldContain("nobody is set up");
    }

    [Fact]
    public void A_report_of_another_unit_is_refused()
    {
        using TemporaryHome home = InventedHome.AfterTheRound().With("roster.json", InventedHome.Roster.Replace(
            "\"room\": 12, \"bed\": \"a\"", "\"room\": 12, \"bed\": \"a\", \"unit\": \"East\"", StringComparison.Ordinal)
            .Replace("\"room\": 3,", "\"room\": 3, \"unit\": \"West\",", StringComparison.Ordinal)).WithPeople();

        home.As("nurse-1", "report", "acknowledge", Report, "--unit", "West").ErrorLines.ShouldHaveSingleItem().ShouldContain("it is of East, not of West");
        home.As("nurse-1", "report", "list", "--unit", "West").Out.ShouldStartWith("No open reports.");
        home.As("nurse-1", "report", "acknowledge", Report, "--unit", "east").Code.ShouldBe(0);
    }

    [Fact]
    public void A_report_of_a_resident_who_is_gone_is_not_lost()
    {
        using TemporaryHome home = InventedHome.AfterTheRound().With("roster.json", """
            { "residents": [{ "id": "r3", "name": "Cy Marsh", "room": 3, "born": "1928-02-29" }] }
            """).WithPeople();

        home.As("nurse-1", "report", "list").Out.ShouldContain("s-4  resident r1, no longer on the roster: open");
        home.As("nurse-1", "handover", "--ask", "open reports").Out.ShouldContain("Resident r1, no longer on the roster: report now, pulse, one three six");
        home.As("nurse-1", "report", "show", Report).Out.ShouldContain("Resident r1, no longer on the roster. Report now: pulse");
        home.As("nurse-1", "report", "acknowledge", Report).Code.ShouldBe(0);
        home.As("nurse-1", "report", "plan", Report, "--value", "pulse", "--greatest", "140", "--until", "16:00").ErrorLines
            .ShouldHaveSingleItem().ShouldContain("its resident is no longer on the roster");
        home.As("nurse-1", "report", "close", Report, "--outcome", "moved out").Code.ShouldBe(0);
    }

    [Fact]
    public void With_JSON_the_list_and_the_sheet_are_for_scripts()
    {
        using TemporaryHome home = InventedHome.AfterTheRound().WithPeople();

        JsonElement line = JsonDocument.Parse(home.As("nurse-1", "report", "list", "--json").Lines.ShouldHaveSingleItem()).RootElement;
        JsonElement sheet = JsonDocument.Parse(home.As("nurse-1", "report", "show", Report, "--json").Lines.ShouldHaveSingleItem()).RootElement;

        (line.GetProperty("id").GetString(), line.GetProperty("state").GetString(), line.GetProperty("overdue").GetBoolean()).ShouldBe((Report, "open", true));
        line.GetProperty("name").ValueKind.ShouldBe(JsonValueKind.Null);
        sheet.GetProperty("assessment").GetString().ShouldBe("Left for the nurse.");
        sheet.GetProperty("situation").EnumerateArray().First().GetString()!.ShouldContain("pulse 136 /min");
    }

    [Fact]
    public void Names_are_shown_only_where_the_home_says_so_and_never_spoken()
    {
        using TemporaryHome home = InventedHome.AfterTheRound().WithPeople();
        home.As("nurse-1", "report", "show", Report).Out.ShouldNotContain("Quill");
        home.With("new.json", """{ "timeZone": "America/Chicago", "aide": "aide-7", "namesOnScreen": true }""");
        home.As("super-1", "settings", "import", home.At("new.json")).Code.ShouldBe(0);

        home.As("nurse-1", "report", "show", Report).Out.ShouldContain("Room 12 bed A [Ada Quill]");
        home.As("nurse-1", "report", "list").Out.ShouldContain("[Ada Quill]");
        CommandRun handover = home.As("nurse-1", "handover", "--ask", "open reports");
        handover.Lines[0].ShouldNotContain("Quill");
        handover.Lines[1].ShouldStartWith("  [Ada Quill] Room 12 bed A: report now");
    }

    [Fact]
    public void A_report_is_printed_as_a_page_without_script_that_overwrites_nothing()
    {
        using TemporaryHome home = InventedHome.AfterTheRound().WithPeople();
        string file = home.At("report.html");

        home.As("nurse-1", "report", "print", Report, "--html", "--out", file).Code.ShouldBe(0);

        string page = File.ReadAllText(file);
        Golden.Match(page);
        page.ShouldNotContain("<script");
        page.ShouldNotContain("http");
        home.As("nurse-1", "report", "print", Report, "--out", file).ErrorLines.ShouldHaveSingleItem().ShouldContain("is there already");
        home.As("nurse-1", "report", "print", Report, "--out", home.At("none/report.txt")).ErrorLines.ShouldHaveSingleItem().ShouldContain("can't be written");
        home.As("nurse-1", "report", "print", Report).Out.ShouldContain("In an emergency call for help, don't dictate.");
    }

    /// <summary>Safety rule 20: an amended or moved value runs the rules again for both residents; a changed decision opens or annotates a
    /// report.</summary>
    [Fact]
    public void A_reading_that_is_moved_is_noted_on_the_report_of_the_one_and_reported_of_the_other()
    {
        using TemporaryHome home = InventedHome.AfterTheRound().WithPeople();
        home.As("nurse-1", "report", "acknowledge", Report).Code.ShouldBe(0);

        home.As("nurse-1", "journal", "amend", "move", "3", "r2", "--because", "wrong bed", "--yes").Code.ShouldBe(0);

        home.As("nurse-1", "report", "show", Report).Out.ShouldContain("a reading that this rests on was amended: wrong bed");
        home.As("nurse-1", "report", "list").Out.ShouldContain("room 12 bed B: open, report now, pulse 136 /min");
        home.As("nurse-1", "report", "show", "12b").Out.ShouldContain("pulse 136 /min");
    }

    [Fact]
    public void A_report_that_a_running_round_opens_is_acknowledged_beside_it()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();
        using HomeJournal round = HomeJournal.Open(home.Folder, new App.Unlocking.Unlocker(CommandRun.Quiet, null)).Journal!;
        round.Events.Append(new ReportOpened("t-1", "aide-7", CommandRun.Now, "r2", ReportUrgency.ThisShift, null, [], "the aide is worried", ["aide-worried"]));

        CommandRun.Of(home, "report", "told", "12b").Code.ShouldBe(0);
        round.Events.Append(new RoundEnded("t-2", "aide-7", CommandRun.Now));

        CommandRun.Of(home, "report", "list").Lines.ShouldContain(l => l.StartsWith("t-1  room 12 bed B: told, report this shift, the aide is worried", StringComparison.Ordinal));
        CommandRun.Of(home, "journal", "verify").Code.ShouldBe(0);
    }
}
