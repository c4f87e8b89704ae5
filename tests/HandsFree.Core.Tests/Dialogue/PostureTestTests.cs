using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Observations;
using HandsFree.Core.Reports;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>Pressures lying and standing. Sources: safety.md 17; one and three minutes: clinical-rules 0, rule 16 (Freeman 2011).</summary>
public sealed class PostureTestTests
{
    [Fact]
    public void It_is_done_on_order_alone() => Talk.WithMary().Go("posture test").Said.ShouldBe("A posture test is not ordered.");

    [Fact]
    public void It_is_done_with_a_second_person_alone() => WithJohn().Go("posture test", "no").Said.ShouldBe("Only with a second person.");

    [Fact]
    public void Pressures_are_taken_lying_and_after_one_and_three_minutes_of_standing()
    {
        Talk talk = WithJohn().Go("posture test", "yes");
        talk.Said.ShouldBe("The blood pressure, lying down.");
        talk.Go("one two four over seven six", "yes").Said.ShouldBe("Saved. Help the resident stand up, then say standing.");
        talk.Go("standing");
        talk.LastEffects.ShouldContain(new Effect.StartTimer("standing one minute", TimeSpan.FromMinutes(1)));
        talk.LastEffects.ShouldContain(new Effect.StartTimer("standing three minutes", TimeSpan.FromMinutes(3)));
        talk.Go("(after 1 min)", "(timer standing one minute)").Said.ShouldBe("Now the blood pressure, standing.");
        talk.Go("one two zero over seven four").Said.ShouldBe("Blood pressure, one two zero over seven four, standing, one minute.");
        talk.Go("yes").Said.ShouldBe("Saved. Once more at three minutes.");
        talk.Go("(after 2 min)", "(timer standing three minutes)", "one two two over seven six", "yes").Said.ShouldBe("Saved. The posture test is done.");
        talk.Journal.OfType<ReadingRecorded>().Select(r => r.Confirmed.Reading.How.Position).ShouldBe(
            [BodyPosition.Lying, BodyPosition.Standing, BodyPosition.Standing]);
        talk.Journal.OfType<ReadingRecorded>().Select(r => r.Confirmed.Reading.How.MinutesStanding).ShouldBe([null, 1, 3]);
    }

    [Fact]
    public void A_minute_that_comes_while_another_question_is_open_is_not_lost()
    {
        Talk talk = Standing().Go("pulse seventy two", "(after 1 min)", "(timer standing one minute)");
        talk.Said.ShouldBe("Pulse, seven two.");
        talk.Go("yes").Transcript.ShouldContain("Saved.");
        talk.Said.ShouldBe("Now the blood pressure, standing.");
        talk.Go("one two zero over seven four", "(after 3 min)", "(timer standing three minutes)", "yes");
        talk.Said.ShouldBe("Now the blood pressure, standing.");
        talk.Go("one two two over seven six", "yes").Said.ShouldBe("Saved. The posture test is done.");
    }

    [Fact]
    public void The_first_minute_is_not_asked_for_when_three_are_over()
    {
        Talk talk = Standing().Go("pulse seventy two", "(timer standing one minute)", "(after 3 min)", "(timer standing three minutes)", "yes");
        talk.Said.ShouldBe("Now the blood pressure, standing.");
        talk.Go("one two zero over seven four", "yes").Said.ShouldBe("Saved. The posture test is done.");
    }

    [Fact]
    public void A_minute_is_asked_for_once() =>
        Standing().Go("(after 1 min)", "(timer standing one minute)", "(mumble)").LastEffects.OfType<Effect.Say>().ShouldBeEmpty();

    [Fact]
    public void Nothing_else_is_led_to_while_it_runs() => Standing().Go("(nothing)").LastEffects.OfType<Effect.Say>().ShouldBeEmpty();

    [Theory]
    [InlineData("she is dizzy")]
    [InlineData("he feels dizzy")]
    [InlineData("fell")]
    public void Dizzy_or_fell_ends_it_and_is_reported_now(string words)
    {
        Talk talk = Standing().Go(words, "yes");
        talk.Said.ShouldBe("Saved. Tell the nurse before you leave.");
        talk.Transcript.ShouldContain("Use the call light now. Help the resident sit or lie down.");
        talk.Journal.OfType<ReportOpened>().ShouldHaveSingleItem().Urgency.ShouldBe(ReportUrgency.Now);
        talk.Go("(after 1 min)", "(timer standing one minute)").LastEffects.ShouldBeEmpty();
    }

    [Fact]
    public void After_a_no_it_goes_on()
    {
        Talk talk = Standing().Go("dizzy", "(after 1 min)", "(timer standing one minute)", "no");
        talk.Transcript.ShouldContain("Not reported.");
        talk.Said.ShouldBe("Now the blood pressure, standing.");
    }

    private static Talk Standing() => WithJohn().Go("posture test", "yes", "one two four over seven six", "yes", "standing");

    private static Talk WithJohn() => new Talk().Go("room four", "yes", "january ninth");
}
