using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Language.Tests.Sentences;

public sealed class ProductGrammarTests
{
    [Theory]
    [InlineData("readings", "pulse seventy two", """{"kind": "pulse", "value": 72}""")]
    [InlineData("readings", "blood pressure one eighteen over seventy six", """{"kind": "blood pressure", "value": [118, 76]}""")]
    [InlineData("readings", "blood pressure one hundred and eighteen over seven six left arm sitting", """{"kind": "blood pressure", "value": [118, 76], "qualifiers": ["left arm", "sitting"]}""")]
    [InlineData("readings", "temperature ninety eight point six", """{"kind": "temperature", "value": 98.6}""")]
    [InlineData("readings", "temperature thirty seven two", """{"kind": "temperature", "value": 37.2}""")]
    [InlineData("readings", "temperature one hundred two", """{"kind": "temperature", "value": 102}""")]
    [InlineData("readings", "temperature nine eight six", """{"kind": "temperature", "value": 98.6}""")]
    [InlineData("readings", "oxygen ninety two on two liters", """{"kind": "oxygen", "value": 92, "qualifiers": ["on two liters"]}""")]
    [InlineData("readings", "pulse forty four in thirty seconds", """{"kind": "pulse", "counted": 44, "seconds": 30}""")]
    [InlineData("readings", "sixteen to eighteen", """{"hedge": true}""")]
    [InlineData("readings", "it was about seventy I think", """{"hedge": true}""")]
    [InlineData("readings", "I think it is roughly one hundred", """{"hedge": true}""")]
    [InlineData("readings", "somewhere near one oh five", """{"hedge": true}""")]
    [InlineData("readings", "weight refused", """{"not taken": "refused", "kind": "weight"}""")]
    [InlineData("confirmation", "no it is ninety seven", """{"corrected": 97}""")]
    [InlineData("confirmation", "no one three nine", """{"corrected": 139}""")]
    [InlineData("confirmation", "change it to seven three", """{"corrected": 73}""")]
    [InlineData("confirmation", "no ninety eight six", """{"corrected": 98.6}""")]
    [InlineData("identity", "room one twelve bed b", """{"room": 112, "bed": "b"}""")]
    [InlineData("identity", "room six", """{"room": 6, "bed": null}""")]
    [InlineData("identity", "october twenty fifth nineteen forty five", """{"born": "1945-10-25"}""")]
    [InlineData("identity", "february third", """{"born": "02-03"}""")]
    [InlineData("identity", "band four oh one one", """{"band": "4011"}""")]
    [InlineData("count", "forty four", """{"count": 44}""")]
    [InlineData("handover", "how is room fourteen", """{"query": "room", "room": 14}""")]
    public void A_sentence_means_one_thing(string grammar, string words, string meaning) =>
        Matcher.Match(Load(grammar), words).Select(m => m.ToString()).ShouldBe([meaning]);

    private static Grammar Load(string name) => Grammar.Load(Path.Combine(Shared.Repository, "grammars", name + ".jsgf"));
}
