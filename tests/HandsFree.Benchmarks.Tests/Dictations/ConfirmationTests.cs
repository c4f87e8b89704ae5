using HandsFree.Benchmarks.Dictations.Counting;
using HandsFree.Benchmarks.Dictations.Playing;
using Shouldly;
using Xunit;

namespace HandsFree.Benchmarks.Tests.Dictations;

/// <summary>What the confirmation is worth, with an engine that errs on purpose.</summary>
public sealed class ConfirmationTests
{
    private const int Visits = 8;
    private const double Mistaken = 0.2;

    [Fact]
    public void An_attentive_aide_lets_no_mistake_through()
    {
        IReadOnlyList<VisitResult> visits = MarkedRun.Play(Visits, 0, Mistaken, new Habits { SaysOverWrongReadBack = 0 });
        DictationSummary summary = DictationSummary.Of(0, visits);
        summary.ReadBackWrong.Some.ShouldBeGreaterThan(Visits / 2);
        visits.SelectMany(v => v.Rows).Where(r => r.Verdict == Verdict.Wrong).Select(r => string.Join('\n', r.Exchange!)).ShouldBeEmpty();
        visits.SelectMany(v => v.Findings).Where(f => f.Kind == Finding.Unsaid).ShouldBeEmpty();
        summary.FirstTry.Some.ShouldBeLessThan(summary.FirstTry.Of);
    }

    [Fact]
    public void Without_the_confirmation_the_mistakes_are_saved()
    {
        DictationSummary summary = DictationSummary.Of(0, MarkedRun.Play(Visits, 0, Mistaken, confirmed: false));
        summary.WrongSaved.Some.ShouldBeGreaterThan(summary.WrongSaved.Of / 20);
    }

    [Fact]
    public void Who_says_yes_to_everything_saves_mistakes()
    {
        DictationSummary summary = DictationSummary.Of(1, MarkedRun.Play(Visits, 1, Mistaken));
        summary.WrongSaved.Some.ShouldBeGreaterThan(summary.WrongSaved.Of / 20);
    }

    [Fact]
    public void An_engine_without_mistakes_and_a_straight_aide_need_no_second_try()
    {
        IReadOnlyList<VisitResult> visits = MarkedRun.Play(Visits, 0, 0, new Habits().Straight());
        DictationSummary summary = DictationSummary.Of(0, visits);
        visits.SelectMany(v => v.Rows).Where(r => !r.FirstTry).Select(r => string.Join('\n', r.Exchange ?? [])).ShouldBeEmpty();
        visits.SelectMany(v => v.Findings).ShouldBeEmpty();
        summary.SaidTwiceAsPlanned.Some.ShouldBeGreaterThan(0);
        summary.Sets.ShouldBeGreaterThan(0);
    }

    [Fact]
    public void The_same_seed_gives_the_same_dictations()
    {
        string[] one = Texts();
        Texts().ShouldBe(one);

        static string[] Texts() => [.. MarkedRun.Play(3, 0.5, Mistaken).SelectMany(v => v.Rows).Select(r => $"{r.Said} {r.Verdict} {r.Prompts} {r.Seconds}")];
    }
}
