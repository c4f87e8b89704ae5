using HandsFree.Language.Sentences;
using HandsFree.Language.Tests.Jsgf;
using Shouldly;
using Xunit;

namespace HandsFree.Language.Tests.Sentences;

public sealed class AmbiguityTests
{
    [Theory]
    [MemberData(nameof(ProductGrammars.Listened), MemberType = typeof(ProductGrammars))]
    public void No_sentence_of_a_product_grammar_has_two_meanings(string grammar, string? rule) =>
        Ambiguities.Find(ProductGrammars.Load(grammar, rule)).Select(Described).ShouldBeEmpty();

    [Theory]
    [InlineData("public <a> = go {1} | go {2};", "go: 1 or 2")]
    [InlineData("public <a> = <n> [point] <n> { $n }; <n> = one {1} [one {11}];", "one one one: 1 or 11")]
    [InlineData("public <t> = <w> {$w} | <w> <d> { $w + $d / 10 }; <w> = ninety {90} | ninety <d> { 90 + $d }; <d> = seven {7};", "ninety seven: 97 or 90.7")]
    [InlineData("public <p> = <s> over <s> [<x> {1} | <y> { [$s] }]; <s> = one {1} | two {2}; <x> = left; <y> = left;", "one over one left: [1] or 1")]
    [InlineData("public <p> = (<s> { $ & $s })+ | one two one { 'other' }; <s> = one {1} | two {2};", "one two one: \"121\" or \"other\"")]
    [InlineData("public <p> = <s> <s> { $s } | <s> { 3 - $s } <s>; <s> = one {1} | two {2};", "one one: 1 or 2")]
    public void A_sentence_with_two_meanings_is_found(string body, string described) =>
        Ambiguities.Find(Texts.Body(body)).Select(Described).ShouldContain(d => Same(d, described), $"not {described}");

    [Theory]
    [InlineData("public <a> = go {1} | go {1} | (go) { 2 - 1 };")]
    [InlineData("public <a> = <b> | <c>; <b> = go { x = 1; y = 2 }; <c> = go { y = 2; x = 1 };")]
    [InlineData("public <a> = (<d> { $ & $d })+; <d> = one {1} | two {2};")]
    [InlineData("public <a> = [very] [very] good {1};")]
    [InlineData("public <a> = so and <a> | so;")]
    public void Several_ways_to_one_meaning_are_no_ambiguity(string body) => Ambiguities.Find(Texts.Body(body)).ShouldBeEmpty();

    [Fact]
    public void It_stops_after_as_many_as_were_asked_for() =>
        Ambiguities.Find(Texts.Body("public <a> = (go {1} | go {2}) [on [up [and [out]]]];"), most: 3).Count.ShouldBe(3);

    private static bool Same(string described, string wanted)
    {
        string[] parts = wanted.Split(": ", 2);
        return described == wanted || described == $"{parts[0]}: {string.Join(" or ", parts[1].Split(" or ").Reverse())}";
    }

    private static string Described(Ambiguity a) => $"{a.Words}: {string.Join(" or ", a.Meanings)}";
}
