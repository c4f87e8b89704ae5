using HandsFree.Language.Grammars;
using HandsFree.Language.Meaning;
using HandsFree.Language.Sentences;
using HandsFree.Language.Tests.Jsgf;
using HandsFree.Language.Tests.Spoken;
using Shouldly;
using Xunit;

namespace HandsFree.Language.Tests.Sentences;

public sealed class SamplerTests
{
    [Theory]
    [InlineData("readings", null, """{"kind": "pulse", "value": 118}""", 12)]
    [InlineData("readings", null, """{"kind": "temperature", "value": 98.6, "qualifiers": ["ear"]}""", 16)]
    [InlineData("readings", null, """{"kind": "blood pressure", "value": [118, 76]}""", 24)]
    [InlineData("readings", null, """{"kind": "blood pressure", "value": [118, 118], "qualifiers": ["left arm", "sitting"]}""", 100)]
    [InlineData("readings", null, """{"kind": "oxygen", "value": 92, "qualifiers": ["on two liters"]}""", 8)]
    [InlineData("readings", null, """{"kind": "weight", "value": 154.3, "unit": "kg"}""", 10)]
    [InlineData("readings", null, """{"kind": "pain", "value": 4}""", 2)]
    [InlineData("readings", null, """{"not taken": "refused", "kind": "weight"}""", 3)]
    [InlineData("readings", null, """{"command": "help"}""", 1)]
    [InlineData("identity", null, """{"room": 112, "bed": "b"}""", 4)]
    [InlineData("identity", null, """{"room": 6, "bed": null}""", 1)]
    [InlineData("identity", null, """{"born": "1945-10-25"}""", 8)]
    [InlineData("identity", null, """{"born": "10-25"}""", 8)]
    [InlineData("identity", null, """{"band": "4011"}""", 4)]
    [InlineData("value", "temperature", """{"value": 37.2}""", 4)]
    [InlineData("value", "pressure", """{"value": [118, 76]}""", 12)]
    [InlineData("confirmation", "pressure", """{"corrected": [118, 76]}""", 40)]
    [InlineData("confirmation", null, """{"confirm": false}""", 2)]
    [InlineData("count", null, """{"count": 44}""", 2)]
    [InlineData("handover", null, """{"query": "room", "room": 14}""", 4)]
    [InlineData("values", "pulse_value", "118", 4)]
    public void Every_sentence_for_a_value_means_that_value_alone(string grammar, string? rule, string meaning, int atLeast)
    {
        Grammar loaded = ProductGrammars.Load(grammar, rule);
        SemanticValue wanted = Means.Json(meaning);
        List<string> sentences = [.. Sampler.For(loaded, wanted).Select(s => s.Words).Distinct()];
        sentences.Count.ShouldBeGreaterThanOrEqualTo(atLeast);
        foreach (string sentence in sentences)
        {
            Matcher.Match(loaded, sentence).ShouldBe([wanted], sentence);
        }
    }

    [Fact]
    public void A_pulse_of_118_is_said_in_every_form_that_there_is() =>
        Sampler.For(ProductGrammars.Load("value", "pulse"), Means.Json("""{"value": 118}""")).Select(s => s.Words)
            .Where(w => !w.Contains("pulse", StringComparison.Ordinal) && !w.Contains("heart", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal).ShouldBe(SpokenNumber.Forms(118).Order(StringComparer.Ordinal));

    [Theory]
    [InlineData("values", "temperature_value")]
    [InlineData("values", "oxygen_value")]
    [InlineData("values", "pain_value")]
    [InlineData("confirmation", "yes_no")]
    [InlineData("phrases", "not_taken")]
    [InlineData("handover", null)]
    public void The_sentences_of_all_values_are_all_sentences(string grammar, string? rule)
    {
        Grammar loaded = ProductGrammars.Load(grammar, rule);
        List<Sentence> all = [.. Sampler.All(loaded)];
        SemanticValue[] each = [.. all.Select(s => s.Meaning).Distinct()];
        int step = Math.Max(29, each.Length / 40);
        SemanticValue[] some = [.. each.Where((_, i) => i % step == 0)];
        foreach (SemanticValue value in some)
        {
            Sampler.For(loaded, value).Select(s => s.Words).Order(StringComparer.Ordinal)
                .ShouldBe(all.Where(s => s.Meaning.Equals(value)).Select(s => s.Words).Order(StringComparer.Ordinal));
        }
    }

    [Theory]
    [InlineData("public <a> = <b> { x = 1 } | <b>; <b> = go { y = 2 };", """{"y": 2, "x": 1}""", "go")]
    [InlineData("public <a> = <b> { x = 1 }; <b> = go { x = 2 };", """{"x": 1}""", "go")]
    [InlineData("public <a> = go { x = 1 } <b>; <b> = on { x = 2 };", """{"x": 1}""", "go on")]
    [InlineData("public <a> = <b> [now { x = 2 }]; <b> = go { x = 1 };", """{"x": 1}""", "go")]
    [InlineData("public <a> = <b> [now { x = 2 }]; <b> = go { x = 1 };", """{"x": 2}""", "go now")]
    [InlineData("public <a> = <b> { 7 } | stop { x = 1 }; <b> = go { x = 1 };", "7", "go")]
    [InlineData("public <a> = <b> { p = $b }; <b> = go { x = 1 };", """{"p": {"x": 1}}""", "go")]
    [InlineData("public <a> = <b> <c>; <b> = go { x = 1 }; <c> = on { x = 2 };", """{"x": 2}""", "go on")]
    [InlineData("public <a> = (<d> { $ & $d })+; <d> = one {1} | two {2};", "\"121\"", "one two one")]
    public void Overwritten_and_taken_up_fields_do_not_hide_a_sentence(string body, string meaning, string words) =>
        Sampler.For(Texts.Body(body), Means.Json(meaning)).Single().Words.ShouldBe(words);

    [Theory]
    [MemberData(nameof(ProductGrammars.Listened), MemberType = typeof(ProductGrammars))]
    public void Sentences_drawn_are_sentences_of_the_grammar_with_one_meaning(string grammar, string? rule)
    {
        Grammar loaded = ProductGrammars.Load(grammar, rule);
        var random = new Random(20265);
        for (int i = 0; i < 200; i++)
        {
            string words = Sampler.Draw(loaded, random);
            Matcher.Match(loaded, words).Count.ShouldBe(1, words);
        }
    }

    [Fact]
    public void The_same_seed_draws_the_same_sentences_and_another_seed_others()
    {
        Drawn(1).ShouldBe(Drawn(1));
        Drawn(1).ShouldNotBe(Drawn(2));
    }

    [Fact]
    public void Weights_decide_how_often_an_alternative_is_drawn()
    {
        Grammar grammar = Texts.Body("public <a> = /9/ often | /1/ seldom;");
        var random = new Random(20266);
        int often = Enumerable.Range(0, 10_000).Count(_ => Sampler.Draw(grammar, random) == "often");

        // 9000 expected, standard deviation 30: six of them either way.
        often.ShouldBeInRange(8820, 9180);
    }

    [Fact]
    public void What_cannot_end_is_never_drawn()
    {
        Grammar grammar = Texts.Body("public <a> = [please <VOID>] (go | <VOID> | on <VOID>) ;");
        var random = new Random(20267);
        Enumerable.Range(0, 100).Select(_ => Sampler.Draw(grammar, random)).Distinct().ShouldBe(["go"]);
    }

    private static string[] Drawn(int seed)
    {
        var random = new Random(seed);
        return [.. Enumerable.Range(0, 30).Select(_ => Sampler.Draw(ProductGrammars.Load("readings"), random))];
    }
}
