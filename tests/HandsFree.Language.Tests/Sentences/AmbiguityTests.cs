using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Language.Tests.Sentences;

public sealed class AmbiguityTests
{
    [Theory]
    [MemberData(nameof(ProductGrammars.Listened), MemberType = typeof(ProductGrammars))]
    public void No_sentence_of_a_product_grammar_has_two_meanings(string grammar, string? rule) =>
        Ambiguities.Find(ProductGrammars.Load(grammar, rule)).Select(Described).ShouldBeEmpty();

    private static string Described(Ambiguity a) => $"{a.Words}: {string.Join(" or ", a.Meanings)}";
}
