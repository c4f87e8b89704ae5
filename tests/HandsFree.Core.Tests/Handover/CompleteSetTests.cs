using HandsFree.Core.Handover;
using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;
using HandsFree.Core.Rounds;
using HandsFree.Core.Tests.Dialogue;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Handover;

/// <summary>A set is complete when every sign that is due is taken, refused, or left with a reason. A rule of the product's own.</summary>
public sealed class CompleteSetTests
{
    private static readonly RoundPlan Three = new([VitalSign.Temperature, VitalSign.Pulse, VitalSign.OxygenSaturation]);
    private static readonly Roster Home = new([TestHome.Roster.ById("r-7")!]);
    private static readonly DateTimeOffset Now = TestHome.Morning.AddHours(1);

    private static readonly string[] OnePulse = ["pulse seventy two", "yes"];
    private static readonly string[] Rest = ["temperature ninety eight six by mouth", "yes", "oxygen ninety seven on room air", "yes"];

    private static IReadOnlyList<JournalEvent> Said(params string[] words) =>
        new Talk().Go("room seven", "yes", "february twenty ninth").Go(words).Journal;

    private static HandoverView View(IReadOnlyList<JournalEvent> journal, Resident? who = null) =>
        HandoverView.From(journal, who is null ? Home : new([who]), Three, new HandoverTime(TestHome.Morning.AddHours(-1), Now));

    private static string Ask(HandoverView view, QueryKind kind) => HandoverAnswerer.Answer(view, new(kind, null), HandoverCursor.Start).Text;

    [Fact]
    public void One_value_of_three_is_not_in_order_and_the_others_are_named()
    {
        HandoverView view = View(Said(OnePulse));

        view.Entries[0].Rank.ShouldBe(HandoverRank.Begun);
        Ask(view, QueryKind.Handover).ShouldBe("1 resident. 1 not complete. Room 7: not taken yet, temperature and oxygen.");
        Ask(view, QueryKind.HowManyAreLeft).ShouldBe("1 resident is left: 1 begun. Room 7: not taken yet, temperature and oxygen.");
        Ask(view, QueryKind.WhoWasNotTaken).ShouldBe("1 resident. Room 7: not taken yet, temperature and oxygen.");
    }

    [Fact]
    public void All_that_is_due_taken_is_in_order_and_nobody_is_left()
    {
        HandoverView view = View(Said([.. OnePulse, .. Rest]));

        view.Entries[0].Rank.ShouldBe(HandoverRank.InOrder);
        Ask(view, QueryKind.Handover).ShouldBe("1 resident. All in order. Room 7: in order.");
        Ask(view, QueryKind.HowManyAreLeft).ShouldBe("Nobody is left.");
        Ask(view, QueryKind.WhoWasNotTaken).ShouldBe("Everybody was taken.");
    }

    [Fact]
    public void What_was_refused_is_settled_and_said_with_its_reason()
    {
        HandoverView view = View(Said([.. OnePulse, "refused", "yes"]));

        view.Entries[0].StillDue.ShouldBeEmpty();
        Ask(view, QueryKind.Handover).ShouldBe("1 resident. 1 with something not taken. Room 7: all that was open, refused.");
        Ask(view, QueryKind.HowManyAreLeft).ShouldBe("Nobody is left.");
    }

    [Fact]
    public void A_refusal_of_all_settles_nothing_any_more_once_a_sign_was_taken_after_it()
    {
        IReadOnlyList<JournalEvent> journal = Said(["refused", "yes"]);
        NotTakenRecorded refused = journal.OfType<NotTakenRecorded>().Single(n => n.Sign is null);
        ReadingRecorded pulse = Said(OnePulse).OfType<ReadingRecorded>().Single() with { Id = "later", At = refused.At.AddMinutes(5) };

        View([.. journal, pulse]).Entries[0].StillDue.ShouldBe([VitalSign.Temperature, VitalSign.OxygenSaturation]);
    }

    [Fact]
    public void A_value_left_open_has_no_reason_and_is_left()
    {
        IReadOnlyList<JournalEvent> journal = Said([.. OnePulse, .. Rest]);
        ReadingRecorded pulse = journal.OfType<ReadingRecorded>().First();
        HandoverView view = View([.. journal.Where(e => e != pulse), new LeftOpen("open", "aide-1", pulse.At, "r-7", VitalSign.Pulse)]);

        view.Entries[0].Rank.ShouldBe(HandoverRank.LeftOpen);
        Ask(view, QueryKind.HowManyAreLeft).ShouldBe("1 resident is left: 1 with a value left open. Room 7: left open, pulse.");
    }

    [Fact]
    public void What_was_taken_before_the_list_begins_is_due_again()
    {
        IReadOnlyList<JournalEvent> journal = Said([.. OnePulse, .. Rest]);

        HandoverView next = HandoverView.From(journal, Home, Three, new HandoverTime(TestHome.Morning.AddHours(7), TestHome.Morning.AddHours(8)));

        next.Entries[0].ShouldSatisfyAllConditions(e => e.NotVisited.ShouldBeTrue(), e => e.Rank.ShouldBe(HandoverRank.NothingYet));
    }

    [Fact]
    public void Her_own_schedule_adds_a_sign_and_takes_one_away()
    {
        // 2 March 2026 is a Monday.
        Resident ann = Home.Residents[0] with
        {
            Schedule =
            [
                new ScheduledSign(VitalSign.Weight, Frequency.Weekly, "Dr Lund") { Weekday = DayOfWeek.Monday },
                new ScheduledSign(VitalSign.Temperature, Frequency.Weekly, "Dr Lund") { Weekday = DayOfWeek.Tuesday },
            ],
        };
        ReadingRecorded said = Said(Rest).OfType<ReadingRecorded>().First();
        DateTimeOffset wednesday = said.At.AddDays(-5);
        Confirmed then = said.Confirmed.ReadBack.ByYes(said.Confirmed.Confirmation, new Attribution("aide-1", wednesday, wednesday, false));

        View([said with { Id = "old", At = wednesday, Confirmed = then }, .. Said(OnePulse)], ann).Entries[0].StillDue.ShouldBe([VitalSign.OxygenSaturation, VitalSign.Weight]);
    }

    [Fact]
    public void Nobody_waits_for_who_is_away()
    {
        HandoverView view = View([], Home.Residents[0] with { Away = new Absence("hospital", new DateOnly(2026, 3, 1), null) });

        view.Entries[0].NotVisited.ShouldBeFalse();
        Ask(view, QueryKind.HowManyAreLeft).ShouldBe("Nobody is left.");
        Ask(view, QueryKind.Handover).ShouldBe("1 resident. All in order. Room 7: away, hospital.");
    }
}
