using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>"Dizzy" and "fell" wherever somebody speaks. Source: safety.md 15 to 17.</summary>
public sealed class UnwellTests
{
    private const string CallLight = "Use the call light now. Help the resident sit or lie down.";

    public static TheoryData<StateKind, string[]> OpenQuestions => new()
    {
        { StateKind.Ready, [] },
        { StateKind.AwaitingConfirmation, ["pulse seventy two"] },
        { StateKind.AwaitingSayingAgain, ["respirations thirteen"] },
        { StateKind.AwaitingValue, ["pulse seventy two", "no"] },
        { StateKind.Counting, ["count", "(played)"] },
        { StateKind.AwaitingCount, ["count", "(played)", "(timer count)"] },
        { StateKind.AwaitingNotTaken, ["pulse refused"] },
        { StateKind.AwaitingAnswer, ["i'm worried"] },
        { StateKind.AwaitingUndo, ["pulse seventy two", "yes", "undo"] },
        { StateKind.AwaitingRecheck, ["temperature one oh one", "yes", "one oh one"] },
        { StateKind.Paused, ["pause"] },
    };

    [Theory]
    [MemberData(nameof(OpenQuestions))]
    public void It_is_answered_at_once_and_reported_now(StateKind state, string[] before)
    {
        Talk talk = Talk.WithMary().Go(before);
        talk.State.Kind.ShouldBe(state);
        talk.Go("she fell").Said.ShouldBe("Saved. Tell the nurse before you leave.");
        talk.Transcript.ShouldContain(CallLight);
        ReportOpened report = talk.Journal.OfType<ReportOpened>().ShouldHaveSingleItem();
        (report.Urgency, report.Resident, report.Rules).ShouldBe((ReportUrgency.Now, "r-12b", report.Rules));
        report.Rules.ShouldBe(["dizzy-or-fell"]);
    }

    [Fact]
    public void What_waited_is_left_open_and_not_recorded()
    {
        Talk talk = Talk.WithMary().Go("pulse seventy two", "he is dizzy");
        talk.Journal.OfType<ReadingRecorded>().ShouldBeEmpty();
        talk.Journal.OfType<LeftOpen>().ShouldHaveSingleItem().Sign.ShouldBe(VitalSign.Pulse);
        talk.Journal.OfType<AttemptDiscarded>().ShouldHaveSingleItem().Why.ShouldBe("dizzy or fell");
    }

    [Fact]
    public void Counts_that_wait_to_be_read_back_are_left_open_too()
    {
        Talk talk = Talk.WithMary().Go("count", "(played)", "(timer count)", "thirty six", "(played)", "she fell");
        talk.Journal.OfType<LeftOpen>().Select(l => l.Sign).ShouldBe([VitalSign.Respirations, VitalSign.Pulse], ignoreOrder: true);
        talk.State.Kind.ShouldBe(StateKind.Ready);
    }

    [Theory]
    [InlineData()]
    [InlineData("room twelve bed b")]
    [InlineData("room twelve bed b", "yes")]
    [InlineData("handover")]
    public void Before_anybody_is_identified_only_the_call_light_is_named(params string[] before)
    {
        Talk talk = new Talk().Go(before);
        StateKind state = talk.State.Kind;
        talk.Go("she fell").Said.ShouldBe("Use the call light now.");
        talk.State.Kind.ShouldBe(state);
        talk.Journal.OfType<ReportOpened>().ShouldBeEmpty();
    }

    [Fact]
    public void What_could_not_be_written_is_written_with_the_report()
    {
        Talk talk = Talk.WithMary().Go("(saving fails)", "pulse seventy two", "yes", "(saving works)", "she fell");
        talk.Said.ShouldBe("Saved. Tell the nurse before you leave.");
        talk.Journal.OfType<ReadingRecorded>().ShouldHaveSingleItem();
        talk.Journal.OfType<ReportOpened>().ShouldHaveSingleItem();
    }
}
