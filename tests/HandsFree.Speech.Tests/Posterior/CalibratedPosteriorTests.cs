using HandsFree.Language.Meaning;
using HandsFree.Speech.Posterior;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Posterior;

public sealed class CalibratedPosteriorTests
{
    private const string Noise = "noise", TooLong = "too long";
    private static readonly SemanticValue Thirteen = new SemanticNumber(13);
    private static readonly SemanticValue Thirty = new SemanticNumber(30);

    /// <summary>Weights by hand: half of the score, "none of these" as likely as a value of score 0 in quiet, likelier in noise.</summary>
    private static readonly PosteriorParameters ByHand = new(1, [], 0.7,
        new Dictionary<string, double> { [Facts.Score] = 0.5, [TooLong] = -2 },
        new Dictionary<string, double> { [Facts.Bias] = 0, [Noise] = 1 });

    [Fact]
    public void The_probabilities_are_the_weights_over_their_sum()
    {
        // exp(0.5 * 4) : exp(0.5 * 2) : exp(0), worked out by hand.
        Hearing hearing = CalibratedPosterior.Decide(Found(4, 2), ByHand);
        double sum = Math.Exp(2) + Math.Exp(1) + 1;
        hearing.Candidates.Select(c => c.Probability).ShouldBe([Math.Exp(2) / sum, Math.Exp(1) / sum], 1e-12);
        hearing.Best!.Meaning.ShouldBe(Thirteen);
        hearing.Margin.ShouldBe(1, 1e-9);
    }

    [Fact]
    public void Two_values_of_the_same_score_share_the_probability_and_neither_is_sure()
    {
        Hearing hearing = CalibratedPosterior.Decide(Found(20, 20), ByHand);
        hearing.Outcome.ShouldBe(HearingOutcome.Doubtful);
        hearing.Candidates.ShouldAllBe(c => Math.Abs(c.Probability - 0.5) < 1e-3);
        hearing.Margin.ShouldBe(0, 1e-9);
    }

    [Fact]
    public void Whether_it_was_any_sentence_is_asked_of_all_values_together()
    {
        // Shares by hand: exp(0.5 * 2) twice over the sum with 1 is 0.845; exp(0.5 * 0.2) twice is 0.688, below 0.7.
        CalibratedPosterior.Decide(Found(2, 2), ByHand).Outcome.ShouldBe(HearingOutcome.Doubtful);
        CalibratedPosterior.Decide(Found(0.2, 0.2), ByHand).Outcome.ShouldBe(HearingOutcome.NoReading);
    }

    [Fact]
    public void With_none_of_these_it_adds_up_to_one_and_a_better_score_is_never_less_likely()
    {
        var random = new Random(1);
        for (int i = 0; i < 1000; i++)
        {
            double a = 40 * (random.NextDouble() - 0.5);
            double b = 40 * (random.NextDouble() - 0.5);
            Hearing hearing = CalibratedPosterior.Decide(Found(a, b), ByHand);
            hearing.Candidates.Sum(c => c.Probability).ShouldBeInRange(0, 1);
            Hearing better = CalibratedPosterior.Decide(Found(a + random.NextDouble(), b), ByHand);
            Of(better, Thirteen).ShouldBeGreaterThanOrEqualTo(Of(hearing, Thirteen));
            Of(better, Thirty).ShouldBeLessThanOrEqualTo(Of(hearing, Thirty));
        }
    }

    [Fact]
    public void Noise_and_speech_that_is_too_long_make_a_value_less_likely()
    {
        double quiet = CalibratedPosterior.Decide(Found(4, 0), ByHand).Best!.Probability;
        CalibratedPosterior.Decide(Found(4, 0, noise: 2), ByHand).Best!.Probability.ShouldBeLessThan(quiet);
        CalibratedPosterior.Decide(Found(4, 0, tooLong: 1), ByHand).Best!.Probability.ShouldBeLessThan(quiet);
    }

    [Fact]
    public void Nothing_found_is_no_reading_and_a_beginning_is_partial()
    {
        Evidence none = Found(0, 0) with { Values = [] };
        CalibratedPosterior.Decide(none, ByHand).Outcome.ShouldBe(HearingOutcome.NoReading);
        CalibratedPosterior.Decide(none with { IsPrefix = true }, ByHand).Outcome.ShouldBe(HearingOutcome.Partial);
    }

    [Fact]
    public void What_the_search_left_out_bounds_the_margin()
    {
        Hearing hearing = CalibratedPosterior.Decide(Found(4, 0) with { Unfound = Value(Thirty, "", 2, 0).Facts }, ByHand);
        hearing.Unfound.ShouldBe(Math.Exp(1) / (Math.Exp(2) + 1 + 1), 1e-12);
        hearing.Margin.ShouldBe(1, 1e-9);
        CalibratedPosterior.Decide(Found(4, 0), ByHand).Unfound.ShouldBe(0);
    }

    [Fact]
    public void A_weight_for_something_that_is_not_measured_is_told() =>
        Should.Throw<InvalidOperationException>(() => CalibratedPosterior.Decide(Found(4, 0), ByHand with { None = new Dictionary<string, double> { ["moon"] = 1 } }))
            .Message.ShouldContain("\"moon\"");

    private static double Of(Hearing hearing, SemanticValue value) => hearing.Candidates.First(c => c.Meaning.Equals(value)).Probability;

    private static Evidence Found(double a, double b, double noise = 0, double tooLong = 0) => new(
        [Value(Thirteen, "thirteen", a, tooLong), Value(Thirty, "thirty", b, tooLong)],
        new Dictionary<string, double> { [Facts.Bias] = 1, [Noise] = noise },
        "what was heard",
        false);

    private static FoundValue Value(SemanticValue meaning, string words, double score, double tooLong) =>
        new(meaning, words, new Dictionary<string, double> { [Facts.Score] = score, [TooLong] = tooLong });
}
