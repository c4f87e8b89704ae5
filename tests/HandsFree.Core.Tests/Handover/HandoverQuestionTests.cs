using HandsFree.Core.Dialogue;
using HandsFree.Core.Handover;
using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;
using HandsFree.Core.Tests.Dialogue;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Handover;

/// <summary>Questions by voice within a round, from the words to the answer.</summary>
public sealed class HandoverQuestionTests
{
    private static readonly DialogueSettings Settings = new()
    {
        ShiftBegan = TestHome.Morning.AddHours(-1),
        Shifts = new ShiftClock(TimeZoneInfo.FindSystemTimeZoneById("America/Chicago"), [new(7, 0), new(15, 0), new(23, 0)]),
    };

    private static Talk AfterMary() => Talk.WithMary(Settings).Go(
        "pulse forty four", "four four", "forty six", "four six", "temperature ninety eight six by mouth", "yes", "next resident", "handover");

    [Theory]
    [InlineData("pulse of room twelve bed b", "Room 12 bed B: pulse, four six at 8:00, usual seven two.")]
    [InlineData("last temperature in room twelve bed b", "Room 12 bed B: temperature, nine eight point six Fahrenheit, mouth at 8:00, usual nine eight point two Fahrenheit.")]
    [InlineData("pressure of room twelve bed b", "Room 12 bed B: blood pressure was not taken.")]
    [InlineData("pulse of room twelve", "Room 12 bed B: pulse, four six at 8:00, usual seven two. Room 12 bed A: pulse was not taken.")]
    [InlineData("oxygen of room ninety", "Room 90 is not in this home.")]
    [InlineData("room ninety", "Room 90 is not in this home.")]
    [InlineData("room twelve bed d", "Room 12 has no bed D.")]
    [InlineData("how is room four", "Room 4: nothing taken yet.")]
    [InlineData("how many are left", "4 residents are left: 3 not visited, 1 begun. Room 12 bed B: not taken yet, respirations, blood pressure and oxygen.")]
    [InlineData("since when", "Since 7:00.")]
    [InlineData("who is new or changed", "1 resident. Room 12 bed B: report now, pulse, four four, then four six, usual seven two; not taken yet, respirations, blood pressure and oxygen.")]
    public void A_question_is_answered_short_with_room_and_bed_alone(string question, string answer) => AfterMary().Go(question).Said.ShouldBe(answer);

    [Fact]
    public void Details_say_when_each_was_measured_and_who_knows() =>
        AfterMary().Go("details").Said.ShouldStartWith(
            "Room 12 bed B: report now, pulse, four four at 8:00, then four six at 8:00, usual seven two, nobody told yet. Last values:");

    [Fact]
    public void Told_the_nurse_is_kept_when_it_is_said_twice_and_the_list_says_so()
    {
        Talk talk = AfterMary().Go("told the nurse");
        talk.Said.ShouldBe("Room 12 bed B: nurse told? Say it again to keep it.");
        talk.Journal.OfType<ReportTold>().ShouldBeEmpty();

        talk.Go("told the nurse").Said.ShouldBe("Room 12 bed B: nurse told.");

        ReportTold told = talk.Journal.OfType<ReportTold>().ShouldHaveSingleItem();
        (told.Whom, told.Person, told.Report).ShouldBe((Told.Nurse, "aide-1", talk.Journal.OfType<ReportOpened>().Single().Id));
        talk.Go("open reports").Said.ShouldBe("1 open report. Room 12 bed B: report now, pulse, four four, then four six, usual seven two, nurse told at 8:00.");
        talk.Go("told the nurse").Said.ShouldContain("already");
    }

    [Theory]
    [InlineData("next")]
    [InlineData("since when")]
    public void Something_else_between_the_two_tells_nobody(string between)
    {
        Talk talk = AfterMary().Go("told the nurse", between, "open reports", "told the nurse");

        talk.Said.ShouldContain("Say it again");
        talk.Journal.OfType<ReportTold>().ShouldBeEmpty();
    }

    [Fact]
    public void Told_without_a_report_in_hand_and_told_the_family_are_answered_and_keep_nothing()
    {
        Talk talk = AfterMary().Go("how is room four", "told the nurse");
        talk.Said.ShouldBe("Which report? Say open reports, then next.");

        talk.Go("open reports", "told the family", "told the family").Said.ShouldContain("entered by a nurse");
        talk.Journal.OfType<ReportTold>().ShouldBeEmpty();
    }

    [Fact]
    public void Told_that_the_journal_could_not_write_is_not_kept_and_not_said()
    {
        Talk talk = AfterMary().Go("told the nurse", "(saving fails)", "told the nurse");
        talk.Said.ShouldBe("Not saved. Try again?");

        talk.Go("(saving works)", "no").Said.ShouldBe("Not saved. Write it on paper.");
        talk.Go("open reports").Said.ShouldNotContain("told at");
    }

    [Fact]
    public void Since_narrows_the_list_in_hand_until_another_beginning_is_said()
    {
        Talk talk = AfterMary().Go("(after 50 min)", "who was not taken");
        talk.Said.ShouldStartWith("4 residents. Room 12 bed B: not taken yet");

        talk.Go("since eight thirty").Said.ShouldStartWith("Since 8:30: 4 residents.");
        talk.Go("since when").Said.ShouldBe("Since 8:30.");
        talk.Go("since the last shift").Said.ShouldStartWith("Since Sunday 23:00: 4 residents.");
        talk.Go("pulse of room twelve bed b", "since eight thirty").Said
            .ShouldBe("Since 8:30: Room 12 bed B: pulse not taken since 8:30; before, pulse, four six, 8:00, usual seven two.");
    }

    [Fact]
    public void An_open_report_of_a_fever_is_a_fever_also_when_it_is_of_the_shift_before_or_was_lower_since()
    {
        Talk fever = Talk.WithMary(Settings).Go("temperature one hundred one point four by mouth", "one zero one point four");
        ReadingRecorded read = fever.Journal.OfType<ReadingRecorded>().Last();
        JournalEvent[] journal =
        [
            .. fever.Journal.Where(e => e is not (ReportOpened or RecheckAsked)),
            new ReportOpened("r", "aide-1", read.At, read.Resident, ReportUrgency.Now, VitalSign.Temperature, [read.Id], "High fever", ["temperature.now.high"]),
        ];
        HandoverView next = HandoverView.From(journal, TestHome.Roster, TestHome.Round, new HandoverTime(TestHome.Morning.AddHours(7), TestHome.Morning.AddHours(8)));

        HandoverAnswerer.Answer(next, new(QueryKind.WhoHasAFever, null), HandoverCursor.Start).Text
            .ShouldStartWith("1 resident. Room 12 bed B: report now, temperature, one zero one point four");

        ReadingRecorded lower = AfterMary().Journal.OfType<ReadingRecorded>().Single(r => r.Confirmed.Reading.Value is BodyTemperature) with { Id = "later" };
        HandoverView since = HandoverView.From([.. journal, lower], TestHome.Roster, TestHome.Round, new HandoverTime(Settings.ShiftBegan, TestHome.Morning.AddHours(1)));
        HandoverAnswerer.Answer(since, new(QueryKind.WhoHasAFever, null), HandoverCursor.Start).Text.ShouldStartWith("1 resident. Room 12 bed B: report now");
    }

    [Fact]
    public void An_overdue_report_is_counted_as_such() =>
        AfterMary().Go("(after 20 min)", "open reports").Said.ShouldStartWith("1 open report, 1 overdue. Room 12 bed B");

    [Fact]
    public void What_is_no_question_is_answered_by_options_alone() =>
        AfterMary().Go("options").Said.ShouldNotBeEmpty();

    [Fact]
    public void A_resident_who_is_gone_from_the_roster_keeps_her_open_report_first()
    {
        Roster without = new([.. TestHome.Roster.Residents.Where(r => r.Id != "r-12b")]);

        HandoverEntry first = HandoverView.From(AfterMary().Journal, without, TestHome.Round).Entries[0];

        first.Reports.ShouldHaveSingleItem().Sign.ShouldBe(VitalSign.Pulse);
        HandoverAnswerer.Answer(HandoverView.From(AfterMary().Journal, without, TestHome.Round), new(QueryKind.OpenReports, null), HandoverCursor.Start).Text
            .ShouldStartWith("1 open report. Resident r-12b, no longer on the roster: report now, pulse, four four");
    }

    [Fact]
    public void What_a_nurse_acknowledged_stays_on_the_list_of_the_shift_with_advice_and_plan()
    {
        Talk talk = AfterMary();
        string report = talk.Journal.OfType<ReportOpened>().Single().Id;
        DateTimeOffset at = TestHome.Morning.AddMinutes(10);
        JournalEvent[] journal =
        [
            .. talk.Journal, new ReportAcknowledged("n-1", "nurse-1", at, report) { Advised = "count again at noon" },
            new PlanMade("n-2", "nurse-1", at, "r-12b", report, LimitedValue.Pulse, 42, 110, at.AddHours(6), ""),
        ];

        HandoverView view = HandoverView.From(journal, TestHome.Roster, TestHome.Round, new HandoverTime(Settings.ShiftBegan, at.AddMinutes(1)));
        HandoverView next = HandoverView.From(journal, TestHome.Roster, TestHome.Round, new HandoverTime(TestHome.Morning.AddHours(7), TestHome.Morning.AddHours(8)));

        view.Entries[0].Rank.ShouldBe(HandoverRank.Acknowledged);
        HandoverAnswerer.Answer(view, new(QueryKind.Handover, null), HandoverCursor.Start).Text.ShouldEndWith(
            "Room 12 bed B: acknowledged, pulse, four four, then four six, advised: count again at noon, plan, pulse, four two to one one zero until 14:10; not taken yet, respirations, blood pressure and oxygen.");
        next.Entries.ShouldAllBe(e => e.Acknowledged.Count == 0);
    }
}
