using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using Shouldly;
using Xunit;

namespace HandsFree.Language.Tests.Sentences;

/// <summary>What holds for the grammars of the product as a whole.</summary>
public sealed class ProductGrammarTests
{
    [Theory]
    [MemberData(nameof(ProductGrammars.Listened), MemberType = typeof(ProductGrammars))]
    public void Words_are_plain_lower_case(string grammar, string? rule) =>
        ProductGrammars.Load(grammar, rule).Words.Where(w => !w.All(c => c is (>= 'a' and <= 'z') or '\'')).ShouldBeEmpty();

    [Theory]
    [MemberData(nameof(ProductGrammars.Listened), MemberType = typeof(ProductGrammars))]
    public void No_sentence_begins_with_oh(string grammar, string? rule)
    {
        Grammar loaded = ProductGrammars.Load(grammar, rule);
        loaded.Automaton.Next(loaded.Automaton.Start).Arcs.ShouldNotContain(a => a.Word == "oh");
    }

    [Theory]
    [InlineData("readings")]
    [InlineData("count")]
    [InlineData("handover")]
    [InlineData("identity")]
    public void Yes_and_no_are_no_sentences_where_nothing_was_read_back(string grammar)
    {
        ProductGrammars.Load(grammar).Words.ShouldNotContain("yes");
        Matcher.Match(ProductGrammars.Load(grammar), "no").ShouldBeEmpty();
    }

    // A value that is to be said again was read back: it can be refused, and agreeing is not enough.
    [Fact]
    public void Where_a_value_is_said_again_no_is_a_sentence_and_yes_is_none()
    {
        ProductGrammars.Load("value").Words.ShouldNotContain("yes");
        Matcher.Match(ProductGrammars.Load("value"), "no").ShouldHaveSingleItem();
    }

    [Theory]
    [MemberData(nameof(ProductGrammars.Listened), MemberType = typeof(ProductGrammars))]
    public void Never_correct_and_never_regular(string grammar, string? rule)
    {
        ProductGrammars.Load(grammar, rule).Words.ShouldNotContain("correct");
        ProductGrammars.Load(grammar, rule).Words.ShouldNotContain("regular");
    }

    [Fact]
    public void A_temperatures_tenths_need_point_after_a_hundred()
    {
        Grammar temperature = ProductGrammars.Load("value", "temperature");
        for (int units = 1; units <= 9; units++)
        {
            string unit = Spoken.SpokenNumber.Words(units);
            Matcher.Match(temperature, "one hundred " + unit).Single().ShouldBe(Spoken.Means.Record(("value", Spoken.Means.Number(100 + units))));
            Matcher.Match(temperature, $"one hundred {unit} five").ShouldBeEmpty();
            Matcher.Match(temperature, $"one oh {unit} five").ShouldBeEmpty();
        }
    }
}
