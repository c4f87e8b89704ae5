using HandsFree.Language.Meaning;
using HandsFree.Speech.Neural;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Neural;

public sealed class ValuePosteriorTests
{
    private static readonly SemanticValue Thirteen = new SemanticNumber(13);
    private static readonly SemanticValue Thirty = new SemanticNumber(30);

    [Fact]
    public void Two_values_of_the_same_score_share_the_probability_and_neither_is_heard()
    {
        Hearing hearing = ValuePosterior.Decide(Found((Thirteen, -2), (Thirty, -2), free: -2), 1.6);
        hearing.Outcome.ShouldBe(HearingOutcome.NoReading);
        hearing.Candidates.Select(c => c.Probability).ShouldAllBe(p => Math.Abs(p - 0.5) < 0.01);
        hearing.Margin.ShouldBe(0, 1e-9);
    }

    [Fact]
    public void The_margin_is_the_difference_of_the_scores()
    {
        Hearing hearing = ValuePosterior.Decide(Found((Thirteen, -2), (Thirty, -5), free: -2), 1.6);
        hearing.Outcome.ShouldBe(HearingOutcome.Heard);
        hearing.Best!.Meaning.ShouldBe(Thirteen);
        hearing.Margin.ShouldBe(3, 1e-9);
        hearing.Candidates.Sum(c => c.Probability).ShouldBeLessThan(1);
    }

    [Fact]
    public void A_value_far_below_what_was_heard_freely_is_none_of_these()
    {
        Hearing hearing = ValuePosterior.Decide(Found((Thirteen, -15), (Thirty, -30), free: -2), 1.6);
        hearing.Outcome.ShouldBe(HearingOutcome.NoReading);
        hearing.Best!.Probability.ShouldBeLessThan(0.01);
    }

    [Fact]
    public void A_short_answer_to_long_speech_is_none_of_these() =>
        ValuePosterior.Decide(Found((Thirteen, -1), (Thirty, -20), free: -2), 5).Outcome.ShouldBe(HearingOutcome.NoReading);

    private static SearchResult Found((SemanticValue Value, double Score) a, (SemanticValue Value, double Score) b, double free) => new(
        new Dictionary<SemanticValue, (double, string)> { [a.Value] = (a.Score, "thirteen"), [b.Value] = (b.Score, "thirty") },
        "what was heard", free, -10, false);
}
