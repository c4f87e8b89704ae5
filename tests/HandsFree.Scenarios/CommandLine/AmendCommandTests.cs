using HandsFree.App.Homes;
using HandsFree.App.Unlocking;
using HandsFree.Core.Journal;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.CommandLine;

public sealed class AmendCommandTests
{
    /// <summary>Clinical rules, worked example E-10: a final value that is changed stays, with who, when and why.</summary>
    [Fact]
    public void A_corrected_value_stands_beside_the_one_it_replaces_and_annotates_the_report()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();

        CommandRun run = CommandRun.Of(home, "journal", "amend", "correct", "3", "pulse 76", "--because", "misread the display", "--yes");

        run.Code.ShouldBe(0, run.Error);
        run.Lines[0].ShouldStartWith("Was: resident r1, pulse, one three six");
        run.Lines[0].ShouldEndWith("Is: pulse, seven six.");
        JournalEvent[] events = Events(home);
        events.OfType<ReadingRecorded>().Select(r => r.Id).ShouldContain("s-3");
        ReadingRecorded right = events.OfType<ReadingRecorded>().Last();
        right.Amends.ShouldBe("s-3");
        right.Confirmed.By.MeasuredAt.ShouldBe(CommandRun.Now.AddHours(-1).AddMinutes(2));
        ReadingAmended amended = events.OfType<ReadingAmended>().ShouldHaveSingleItem();
        amended.Kind.ShouldBe(AmendmentKind.CorrectedValue);
        amended.Reason.ShouldBe("misread the display");
        events.OfType<ReportNoted>().ShouldHaveSingleItem().Report.ShouldBe("s-4");
        string room = CommandRun.Of(home, "handover", "--ask", "room twelve").Out;
        room.ShouldContain("pulse, seven six");
        room.ShouldContain("corrected from one three six");
        room.ShouldContain("a reading that this rests on was amended: misread the display");
        CommandRun.Of(home, "journal", "list").Out.ShouldContain("amended by aide-7 (corrected value)");
        CommandRun.Of(home, "journal", "amend", "error", "3", "--because", "again", "--yes").Error.ShouldContain("event 3 is amended already");
    }

    [Fact]
    public void A_reading_of_the_wrong_resident_moves_with_both_ends_marked_and_the_rules_run_for_both()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();

        CommandRun.Of(home, "journal", "amend", "move", "3", "r2", "--because", "the beds were changed", "--yes").Code.ShouldBe(0);

        JournalEvent[] events = Events(home);
        EnteredInError gone = events.OfType<EnteredInError>().ShouldHaveSingleItem();
        gone.Event.ShouldBe("s-3");
        gone.Reason.ShouldBe("wrong resident, moved to r2: the beds were changed");
        ReadingRecorded there = events.OfType<ReadingRecorded>().Last();
        there.Resident.ShouldBe("r2");
        ReadingAmended marked = events.OfType<ReadingAmended>().ShouldHaveSingleItem();
        (marked.Event, marked.Becomes, marked.MovedTo).ShouldBe(("s-3", there.Id, "r2"));
        events.OfType<ReportNoted>().ShouldHaveSingleItem().Resident.ShouldBe("r1");

        // 136 a minute is reported at once (clinical-rules, "pulse": above 130), now for the resident whose it is.
        events.OfType<ReportOpened>().Last().Resident.ShouldBe("r2");
    }

    /// <summary>Clinical rules, worked example E-11: a reading of 9:10 that is entered later is a late entry with both times.</summary>
    [Fact]
    public void A_late_entry_is_marked_and_stands_at_the_time_of_measuring()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();

        CommandRun run = CommandRun.Of(
            home, "journal", "amend", "late", "r3", "temperature 98.4", "--measured", "09:10", "--because", "the battery was empty", "--yes");

        run.Code.ShouldBe(0, run.Error);
        ReadingRecorded late = Events(home).OfType<ReadingRecorded>().Last();
        late.Confirmed.By.Late.ShouldBeTrue();
        late.Confirmed.By.MeasuredAt.UtcDateTime.ShouldBe(new DateTime(2026, 3, 3, 15, 10, 0, DateTimeKind.Utc));
        CommandRun.Of(home, "journal", "amend", "late", "r3", "pulse 70", "--measured", "2026-03-04T09:10", "--because", "x", "--yes")
            .Error.ShouldContain("write a time that is over");
    }

    [Fact]
    public void Without_a_yes_nothing_is_written()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();

        CommandRun run = CommandRun.Typing(home, "no\n", "journal", "amend", "error", "3", "--because", "not hers");

        run.Code.ShouldBe(2);
        run.Error.ShouldContain("nothing was written");
        Events(home).Length.ShouldBe(6);
    }

    [Theory]
    [InlineData("event 1 is no reading", "error", "1")]
    [InlineData("event 99 is no reading", "error", "99")]
    [InlineData("no resident with the id \"r9\"", "move", "3", "r9")]
    [InlineData("is resident r1's already", "move", "3", "r1")]
    [InlineData("correct it with a value of the same kind", "correct", "3", "temperature 98.6")]
    [InlineData("that is no reading", "correct", "3", "about seventy")]
    public void What_can_t_be_amended_is_refused_with_the_reason(string says, params string[] args)
    {
        using TemporaryHome home = InventedHome.AfterTheRound();

        CommandRun run = CommandRun.Of(home, ["journal", "amend", .. args, "--because", "a reason", "--yes"]);

        run.Code.ShouldBe(2);
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain(says);
        Events(home).Length.ShouldBe(6);
    }

    private static JournalEvent[] Events(TemporaryHome home)
    {
        using HomeJournal journal = HomeJournal.Open(home.Folder, new Unlocker(CommandRun.Quiet, null)).Journal!;
        return [.. journal.All()];
    }
}
