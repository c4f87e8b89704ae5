using HandsFree.Language.Meaning;
using HandsFree.Speech.Neural;
using HandsFree.Speech.Posterior;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Neural;

public sealed class NeuralEvidenceTests
{
    private static readonly PosteriorParameters Parameters = PosteriorParameters.Carried("neural-posterior.json");
    private static readonly SemanticValue Thirteen = new SemanticNumber(13);
    private static readonly SemanticValue Thirty = new SemanticNumber(30);

    [Fact]
    public void Two_values_of_the_same_score_share_the_probability_and_neither_is_sure()
    {
        Hearing hearing = Decide(Found((Thirteen, -2), (Thirty, -2), "uh", free: -2), 1.6);
        hearing.Outcome.ShouldBe(HearingOutcome.Doubtful);
        hearing.Best!.Probability.ShouldBeLessThanOrEqualTo(0.5);
    }

    [Theory]
    [InlineData("13")]
    [InlineData("30")]
    [InlineData("thirty or so")]
    public void What_was_heard_freely_favours_neither_of_two_values_of_the_same_score(string heard)
    {
        Hearing hearing = Decide(Found((Thirteen, -2), (Thirty, -2), heard, free: -2), 1.6);
        hearing.Candidates[0].Probability.ShouldBe(hearing.Candidates[1].Probability, 1e-12);
        hearing.Margin.ShouldBe(0, 1e-9);
        hearing.Outcome.ShouldBe(HearingOutcome.Doubtful);
    }

    [Fact]
    public void What_was_heard_freely_and_is_like_no_value_makes_none_of_these_likelier()
    {
        double like = Decide(Found((Thirteen, -2), (Thirty, -9), "13", free: -2), 1.6).Candidates.Sum(c => c.Probability);
        Decide(Found((Thirteen, -2), (Thirty, -9), "lunch", free: -2), 1.6).Candidates.Sum(c => c.Probability).ShouldBeLessThan(like);
    }

    [Fact]
    public void A_value_that_is_what_was_heard_freely_is_heard()
    {
        Hearing hearing = Decide(Found((Thirteen, -1), (Thirty, -14), "13", free: -1.5), 1.6);
        hearing.Outcome.ShouldBe(HearingOutcome.Heard);
        hearing.Best!.Meaning.ShouldBe(Thirteen);
        hearing.Candidates.Sum(c => c.Probability).ShouldBeLessThan(1);
    }

    [Fact]
    public void A_value_far_below_what_was_heard_freely_is_none_of_these()
    {
        Hearing hearing = Decide(Found((Thirteen, -20), (Thirty, -30), "what time is lunch", free: -2), 1.6);
        hearing.Outcome.ShouldBe(HearingOutcome.NoReading);
        hearing.Best!.Probability.ShouldBeLessThan(0.01);
    }

    [Fact]
    public void A_short_answer_to_long_speech_is_none_of_these() =>
        Decide(Found((Thirteen, -1), (Thirty, -20), "13", free: -2), 5).Outcome.ShouldBe(HearingOutcome.NoReading);

    [Fact]
    public void The_measures_are_what_they_say()
    {
        Evidence evidence = NeuralEvidence.Of(Found((Thirteen, -3), (Thirty, -6), "30", free: -2) with { Dropped = -7 }, 1.6, 12);
        FoundValue thirteen = evidence.Values.First(v => v.Meaning.Equals(Thirteen));
        thirteen.Facts[Facts.Score].ShouldBe(-1, 1e-12);
        thirteen.Facts[Facts.TooLong].ShouldBe(0);
        evidence.Facts[Facts.Unlike].ShouldBe(0); // "30" is one of the two
        thirteen.Facts.ShouldNotContainKey(Facts.Unlike);
        evidence.Facts[Facts.Noise].ShouldBe(1.8, 1e-12);
        evidence.Facts[Facts.LeftOut].ShouldBe(-5, 1e-12);
        thirteen.Facts[Facts.ScoreInNoise].ShouldBe(-1.8, 1e-12);
        evidence.Unfound![Facts.Score].ShouldBe(-5, 1e-12);
    }

    private static Hearing Decide(SearchResult found, double seconds) =>
        CalibratedPosterior.Decide(NeuralEvidence.Of(found, seconds, SpeechInQuiet), Parameters);

    private const double SpeechInQuiet = 40;

    private static SearchResult Found((SemanticValue Value, double Score) a, (SemanticValue Value, double Score) b, string heard, double free) => new(
        new Dictionary<SemanticValue, (double, string, string)> { [a.Value] = (a.Score, "thirteen", "13"), [b.Value] = (b.Score, "thirty", "30") },
        heard, free, -10, false);
}
