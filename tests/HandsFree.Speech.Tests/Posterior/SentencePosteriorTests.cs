using HandsFree.Language.Grammars;
using HandsFree.Language.Meaning;
using HandsFree.Speech.Posterior;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Posterior;

public sealed class SentencePosteriorTests
{
    private static readonly Grammar Numbers = Grammar.Parse(
        "#JSGF V1.0; grammar n; public <n> = eighty two {82} | eight two {82} | eighteen {18};", "n.jsgf");

    [Fact]
    public void The_forms_of_one_value_are_added()
    {
        IReadOnlyList<Candidate> candidates = SentencePosterior.Share(
            [new("eighteen", Math.Log(2)), new("eighty two", Math.Log(1.5)), new("eight two", Math.Log(1.5))], Numbers, 1);
        candidates.Select(c => c.Meaning).ShouldBe([new SemanticNumber(82), new SemanticNumber(18)]);
        candidates[0].Probability.ShouldBe(0.6, 1e-12);
        candidates[1].Probability.ShouldBe(0.4, 1e-12);
    }

    [Fact]
    public void The_words_of_a_value_are_those_of_its_likeliest_form() =>
        SentencePosterior.Share([new("eighty two", 0), new("eight two", 1)], Numbers, 1)[0].Words.ShouldBe("eight two");

    [Fact]
    public void What_is_no_sentence_is_left_out() =>
        SentencePosterior.Share([new("two two", 5), new("eighteen", 0)], Numbers, 0.7)
            .ShouldBe([new Candidate(new SemanticNumber(18), "eighteen", 0.7)]);

    [Fact]
    public void Without_hypotheses_there_are_no_values() => SentencePosterior.Share([], Numbers, 1).ShouldBeEmpty();

    [Fact]
    public void Very_low_scores_do_not_vanish() =>
        SentencePosterior.Share([new("eighteen", -90_000), new("eight two", -90_000)], Numbers, 1).Sum(c => c.Probability).ShouldBe(1, 1e-12);
}
