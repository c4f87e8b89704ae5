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
        { StateKind.AwaitingRecheck, ["temperature one hundred one", "one zero one"] },
        { StateKind.Paused, ["pause"] },
    };

    [Theory]
    [MemberData(nameof(OpenQuestions))]
    public void It_is_answered_at_once_and_reported_now(StateKind state, string[] before)
    {
        Talk talk = Talk.WithMary().Go(before);
        talk.State.Kind.ShouldBe(state);
        talk.Go("she fell").Said.ShouldBe($"{CallLight} Dizzy or a fall, yes or no?");
        talk.Go("yes").Said.ShouldBe("Saved. Tell the nurse before you leave.");
        ReportOpened report = talk.Journal.OfType<ReportOpened>().ShouldHaveSingleItem();
        (report.Urgency, report.Resident, report.Rules).ShouldBe((ReportUrgency.Now, "r-12b", report.Rules));
        report.Rules.ShouldBe(["dizzy-or-fell"]);
    }

    [Theory] // A short word is easily heard in a noise: what was never said must not be reported, and nothing that waited is lost.
    [MemberData(nameof(OpenQuestions))]
    public void No_goes_back_to_what_waited(StateKind state, string[] before)
    {
        Talk talk = Talk.WithMary().Go(before).Go("she fell", "no");
        talk.Said.ShouldStartWith("Not reported.");
        talk.State.Kind.ShouldBe(state == StateKind.Counting ? StateKind.Ready : state);
        talk.Journal.OfType<ReportOpened>().ShouldBeEmpty();
        AttemptDiscarded kept = talk.Journal.OfType<AttemptDiscarded>().Last(d => d.Why == "no");
        (kept.Heard.Words, kept.ReadBack).ShouldBe(("she fell", "Dizzy or a fall, yes or no?"));
    }

    [Fact]
    public void Said_again_it_is_confirmed_and_reported_once()
    {
        Talk talk = Talk.WithMary().Go("she fell", "she fell");
        talk.Said.ShouldBe("Saved. Tell the nurse before you leave.");
        talk.Go("fell").Said.ShouldBe("Use the call light now. It is reported already.");
        talk.Journal.OfType<ReportOpened>().ShouldHaveSingleItem();
    }

    [Fact]
    public void Another_fall_later_is_another_report() =>
        Talk.WithMary().Go("she fell", "yes", "(after 11 min)", "she fell", "yes").Journal.OfType<ReportOpened>().Count().ShouldBe(2);

    [Fact]
    public void It_is_reported_already_for_whoever_goes_on_after_an_interruption() =>
        Talk.WithMary().Go("she fell", "yes").Interrupted().Go("room twelve bed b", "yes", "march third", "he is dizzy").Said
            .ShouldBe("Use the call light now. It is reported already.");

    [Theory] // Who helps somebody up does not answer.
    [InlineData("(nothing)", "(nothing)", "(nothing)")]
    [InlineData("(nothing)", "(mumble)", "(part)")]
    [InlineData("stop")]
    [InlineData("goodbye")]
    public void Without_an_answer_it_is_reported_as_not_confirmed(params string[] after)
    {
        Talk talk = Talk.WithMary().Go("pulse seventy two", "she fell").Go(after);
        ReportOpened report = talk.Journal.OfType<ReportOpened>().ShouldHaveSingleItem();
        (report.Urgency, report.Situation).ShouldBe((ReportUrgency.Now, "dizzy or fell, heard and not confirmed"));
        talk.Journal.OfType<ReadingRecorded>().ShouldBeEmpty();
        talk.Journal.OfType<LeftOpen>().ShouldHaveSingleItem().Sign.ShouldBe(VitalSign.Pulse);
    }

    [Fact]
    public void Cancel_does_not_drop_it()
    {
        Talk talk = Talk.WithMary().Go("she fell", "cancel");
        talk.Said.ShouldBe("First: Dizzy or a fall, yes or no?");
        talk.State.Kind.ShouldBe(StateKind.AwaitingAnswer);
    }

    [Fact] // Source: safety.md, defaults for pain: chest pain of any strength now.
    public void Chest_pain_is_reported_now_too()
    {
        Talk talk = Talk.WithMary().Go("she has chest pain");
        talk.Said.ShouldBe("Use the call light now. Chest pain, yes or no?");
        ReportOpened report = talk.Go("yes").Journal.OfType<ReportOpened>().ShouldHaveSingleItem();
        (report.Urgency, report.Situation, report.Rules.Single()).ShouldBe((ReportUrgency.Now, "chest pain", "symptoms.chest-pain"));
        talk.Go("she fell", "yes").Journal.OfType<ReportOpened>().Count().ShouldBe(2);
    }

    [Theory] // Source: safety.md 16.
    [InlineData("call the nurse")]
    [InlineData("nurse needed")]
    [InlineData("get help")]
    [InlineData("i need help")]
    [InlineData("emergency")]
    public void Whoever_calls_for_help_hears_that_the_program_cannot_call(string words)
    {
        Talk.WithMary().Go(words).Said.ShouldBe("I cannot call. Use the call light.");
        new Talk().Go("handover", words).Said.ShouldBe("I cannot call. Use the call light.");
        Talk.WithMary().Go("help").Said.ShouldStartWith("I cannot call. Use the call light.");
        Talk.WithMary().Go("options").Said.ShouldNotContain("cannot");
    }

    [Fact]
    public void What_waited_is_left_open_and_not_recorded()
    {
        Talk talk = Talk.WithMary().Go("pulse seventy two", "he is dizzy", "yes");
        talk.Journal.OfType<ReadingRecorded>().ShouldBeEmpty();
        talk.Journal.OfType<LeftOpen>().ShouldHaveSingleItem().Sign.ShouldBe(VitalSign.Pulse);
        talk.Journal.OfType<AttemptDiscarded>().ShouldHaveSingleItem().Why.ShouldBe("dizzy or fell");
    }

    [Fact]
    public void Counts_that_wait_to_be_read_back_are_left_open_too()
    {
        Talk talk = Talk.WithMary().Go("count", "(played)", "(timer count)", "thirty six", "(played)", "she fell", "yes");
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
        Talk talk = Talk.WithMary().Go("(saving fails)", "pulse seventy two", "yes", "(saving works)", "she fell", "yes");
        talk.Said.ShouldBe("Saved. Tell the nurse before you leave.");
        talk.Journal.OfType<ReadingRecorded>().ShouldHaveSingleItem();
        talk.Journal.OfType<ReportOpened>().ShouldHaveSingleItem();
    }
}
