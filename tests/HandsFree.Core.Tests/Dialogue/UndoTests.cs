using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Reports;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>What an undo takes with it, and what it leaves.</summary>
public sealed class UndoTests
{
    private static readonly string[] Mary = ["room twelve bed b", "yes", "march third"];

    [Fact]
    public void A_disk_that_fails_in_an_undo_leaves_the_reading_and_its_recheck_as_they_were()
    {
        Talk talk = Talk.WithMary().Go("pulse forty four", "four four", "undo", "(saving fails)", "yes");
        talk.State.Kind.ShouldBe(StateKind.NotSaved);

        talk.Go("(saving works)", "no").Said.ShouldBe("Not removed. Write it on paper.");

        talk.State.Kind.ShouldBe(StateKind.AwaitingRecheck);
        talk.Go("next resident").Journal.OfType<ReportOpened>().ShouldHaveSingleItem().Situation.ShouldStartWith("recheck not done");
        talk.Journal.OfType<EnteredInError>().ShouldBeEmpty();
    }

    [Fact]
    public void A_disk_that_fails_in_an_undo_and_then_works_undoes()
    {
        Talk talk = Talk.WithMary().Go("pulse forty four", "four four", "undo", "(saving fails)", "yes", "yes", "(saving works)", "yes");

        talk.Said.ShouldBe("Removed.");
        talk.Journal.OfType<EnteredInError>().Count().ShouldBe(2);
        talk.Go("next resident").Journal.OfType<ReportOpened>().ShouldBeEmpty();
    }

    [Theory]
    [InlineData("stop")]
    [InlineData("goodbye")]
    public void Leaving_while_an_undo_is_not_written_leaves_the_recheck_which_is_reported(string leaving)
    {
        Talk talk = Talk.WithMary().Go("pulse forty four", "four four", "undo", "(saving fails)", "yes", "(saving works)", leaving);

        talk.Journal.OfType<ReportOpened>().ShouldHaveSingleItem().Readings.ShouldBe([talk.Journal.OfType<ReadingRecorded>().Single().Id]);
        talk.Journal.OfType<EnteredInError>().ShouldBeEmpty();
    }

    [Fact]
    public void A_disk_that_fails_at_a_reading_leaves_the_set_as_it_was()
    {
        Talk talk = Talk.WithMary().Go("pulse forty four", "(saving fails)", "four four", "(saving works)", "no");

        talk.Said.ShouldBe("Not saved. Write it on paper.");
        talk.State.Kind.ShouldBe(StateKind.Ready);
        talk.Go("undo").Said.ShouldBe("Nothing is saved for this resident.");
        talk.Go("next resident").Journal.OfType<ReportOpened>().ShouldBeEmpty();
        talk.Journal.OfType<ReadingRecorded>().ShouldBeEmpty();
    }

    [Fact]
    public void A_reading_that_was_undone_is_not_there_after_the_program_was_stopped_either()
    {
        Talk talk = Talk.WithMary().Go("pulse seventy two", "yes", "undo", "yes").Interrupted().Go(Mary);

        talk.Go("undo").Said.ShouldBe("Nothing is saved for this resident.");
    }

    [Fact]
    public void Undone_after_coming_back_the_report_that_came_of_leaving_is_in_error_too()
    {
        Talk talk = Talk.WithMary().Go("pulse forty four", "four four", "next resident").Go(Mary).Go("undo", "yes");

        talk.Said.ShouldBe("Removed.");
        ReportOpened report = talk.Journal.OfType<ReportOpened>().ShouldHaveSingleItem();
        talk.Journal.OfType<EnteredInError>().Select(e => e.Event).ShouldContain(report.Id);
        ReportBook.Of(talk.Journal).All.ShouldBeEmpty();
        talk.Journal.OfType<ReportNoted>().ShouldBeEmpty();
    }

    [Fact]
    public void A_report_that_the_nurse_was_told_of_stays_open_with_a_note()
    {
        Talk talk = Talk.WithMary().Go("pulse forty four", "four four", "next resident", "handover", "told the nurse", "told the nurse", "stop").Go(Mary).Go("undo", "yes");

        talk.Said.ShouldBe("Removed. The report stays, with a note. Tell the nurse.");
        ReportOpened report = talk.Journal.OfType<ReportOpened>().ShouldHaveSingleItem();
        talk.Journal.OfType<ReportNoted>().ShouldHaveSingleItem().Report.ShouldBe(report.Id);
        talk.Journal.OfType<EnteredInError>().Select(e => e.Event).ShouldNotContain(report.Id);
        ReportBook.Of(talk.Journal).All.ShouldHaveSingleItem();

        // It is open: the same value again opens no second one.
        talk.Go("pulse forty four", "four four", "pulse forty four", "four four").Journal.OfType<ReportOpened>().ShouldHaveSingleItem();
    }

    [Fact]
    public void A_report_that_was_opened_with_the_reading_and_told_stays_too()
    {
        Talk talk = Talk.WithMary().Go("respirations forty", "four zero", "next resident", "handover", "told the nurse", "told the nurse", "stop").Go(Mary).Go("undo", "yes");

        talk.Journal.OfType<ReportNoted>().ShouldHaveSingleItem();
        ReportBook.Of(talk.Journal).All.ShouldHaveSingleItem();
    }

    [Fact]
    public void A_report_that_rests_on_another_reading_too_stays_with_a_note()
    {
        // The recheck is undone after the aide left: the first reading stands.
        Talk talk = Talk.WithMary(rules: new TwoRechecks()).Go("pulse forty four", "four four", "pulse forty six", "four six", "next resident").Go(Mary).Go("undo", "yes");

        ReportOpened report = talk.Journal.OfType<ReportOpened>().ShouldHaveSingleItem();
        report.Readings.Count.ShouldBe(2);
        talk.Journal.OfType<ReportNoted>().ShouldHaveSingleItem().Report.ShouldBe(report.Id);
        ReportBook.Of(talk.Journal).All.ShouldHaveSingleItem();
    }

    [Fact]
    public void After_a_stop_an_undo_does_not_forget_that_the_next_value_may_be_late()
    {
        Talk talk = Talk.WithMary().Go("pulse seventy two", "yes", "stop").Go(Mary).Go("undo", "yes", "pulse seventy three");

        talk.Said.ShouldBe("Taken since you came back? Say yes or before.");
    }

    [Fact]
    public void A_sign_that_was_left_open_since_stays_open()
    {
        Talk talk = Talk.WithMary().Go("pulse seventy two", "yes", "respirations eighteen", "cancel", "undo", "yes");

        talk.Go("goodbye").Said.ShouldContain("respirations");
    }

    [Fact]
    public void What_was_refused_as_a_read_back_stays_refused_and_the_call_light_is_named_once()
    {
        Talk talk = Talk.WithMary().Go("pulse seventy two", "no", "(typed seventy four)", "yes", "undo", "yes", "pulse seventy two");

        talk.Said.ShouldStartWith("Not sure.");
    }

    [Fact]
    public void The_form_of_an_undo_with_a_report_that_stays() => Golden.Match(
        Talk.WithMary().Go("respirations forty", "four zero", "next resident", "handover", "told the nurse", "told the nurse", "stop").Go(Mary).Go("undo", "yes").Transcript);

    /// <summary>A slow pulse is rechecked twice.</summary>
    private sealed class TwoRechecks : Core.Rules.IRulebook
    {
        private readonly TestRules rules = new();

        public string Hash => rules.Hash;

        public Core.Rules.Decision Decide(Core.Observations.Reading reading, Core.Rules.DecisionContext context) =>
            rules.Decide(reading, context with { RechecksDone = 0 });
    }
}
