using HandsFree.Core.Handover;
using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>A value that must reach the nurse is in the journal with its recheck from the moment it is saved; whatever happens to the
/// program, it is shown until a person has dealt with it. Limits: the shipped rules (pulse below 50, source in the rule's file).</summary>
public sealed class OpenRecheckTests
{
    private static readonly IRulebook Real = Rulebook.Load().Rulebook.ShouldNotBeNull();

    // Pulse 44: report now, after it was counted again.
    private static Talk Saved() => Talk.WithMary(rules: Real).Go("pulse forty four", "four four");

    [Fact]
    public void The_reading_and_its_recheck_are_one_batch()
    {
        Talk talk = Talk.WithMary(rules: Real).Go("pulse forty four", "four four");
        JournalEvent[] last = [.. talk.Journal.TakeLast(2)];

        last[0].ShouldBeOfType<ReadingRecorded>().Decision.Outcome.ShouldBe(Outcome.ReportNow);
        last[1].ShouldBeOfType<RecheckAsked>().Reading.ShouldBe(last[0].Id);
    }

    [Theory]
    [InlineData("aide-1")]
    [InlineData("aide-2")]
    public void A_value_saved_before_a_crash_is_reported_at_the_goodbye_of_the_next_round(string aide)
    {
        Talk next = Saved().Interrupted(aide).Go("goodbye");

        next.Said.ShouldBe("Room 12 bed B: four not taken yet, pulse to recheck. Tell the nurse before you leave: pulse. Goodbye.");
        ReportOpened report = next.Journal.OfType<ReportOpened>().ShouldHaveSingleItem();
        report.Urgency.ShouldBe(ReportUrgency.Now);
        report.Readings.ShouldBe([next.Journal.OfType<ReadingRecorded>().Single().Id]);
        report.Situation.ShouldStartWith("recheck not done; ");
    }

    [Fact]
    public void The_next_round_names_it_at_once_however_late_it_begins()
    {
        Saved().Interrupted("aide-2").Said.ShouldContain("Recheck waits: room 12 bed B, pulse.");
        Saved().Interrupted("aide-2", minutes: 3 * 24 * 60).Said.ShouldContain("Recheck waits: room 12 bed B, pulse.");
    }

    [Fact]
    public void A_report_that_was_opened_is_not_opened_again_by_the_rounds_that_follow()
    {
        Talk talk = Saved().Interrupted("aide-2").Go("goodbye");
        talk.Interrupted("aide-1", minutes: 600).Go("room twelve bed b", "yes", "march third", "goodbye")
            .Journal.OfType<ReportOpened>().ShouldHaveSingleItem();
    }

    [Fact]
    public void A_recheck_that_is_as_it_should_be_ends_it()
    {
        Talk talk = Saved().Interrupted("aide-2", minutes: 20 * 60).Go("room twelve bed b", "yes", "march third");
        talk.Said.ShouldStartWith("Ready. ");
        talk.Go("pulse seventy two", "yes", "goodbye").Journal.OfType<ReportOpened>().ShouldBeEmpty();
        talk.Interrupted().Said.ShouldBe("Room and bed?");
    }

    [Fact]
    public void Every_later_handover_names_value_and_day_until_then()
    {
        Talk talk = Saved().Interrupted("aide-2");
        foreach (int hours in new[] { 1, 9, 30 })
        {
            DateTimeOffset now = TestHome.Morning.AddHours(hours);
            HandoverView view = HandoverView.From(talk.Journal, TestHome.Roster, TestHome.Round, new HandoverTime(now.AddMinutes(-5), now));
            string line = HandoverAnswerer.Answer(view, new Meaning.Query(QueryKind.Handover, null), HandoverCursor.Start).Items[0].Text;
            line.ShouldBe($"Room 12 bed B: recheck waits, pulse, four four, since {(hours == 30 ? "Monday " : "")}8:00.");
        }
    }

    [Fact]
    public void Who_left_the_roster_meanwhile_is_named_all_the_same()
    {
        Roster without = new([.. TestHome.Roster.Residents.Where(r => r.Id != "r-12b")]);
        Talk next = new Talk(rules: Real, roster: without, past: Saved().Journal).Go("goodbye");

        next.Said.ShouldBe("Resident r-12b, no longer on the roster: four not taken yet, pulse to recheck. Tell the nurse before you leave: pulse. Goodbye.");
        next.Journal.OfType<ReportOpened>().ShouldHaveSingleItem();
        HandoverView.From(Saved().Journal, without, TestHome.Round).Entries[0].Rank.ShouldBe(HandoverRank.RecheckWaiting);
    }

    [Fact]
    public void A_recheck_of_last_week_does_not_count_for_a_value_of_today()
    {
        Talk before = Saved().Go("pulse seventy two", "yes", "goodbye");
        Talk today = before.Interrupted("aide-1", minutes: 7 * 24 * 60).Go("room twelve bed b", "yes", "march third", "pulse forty four", "four four");

        today.Journal.OfType<RecheckAsked>().Count().ShouldBe(2);
        today.Journal.OfType<ReportOpened>().ShouldBeEmpty();
    }
}
