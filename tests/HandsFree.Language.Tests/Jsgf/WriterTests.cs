using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using HandsFree.Language.Tests.Sentences;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Language.Tests.Jsgf;

/// <summary>What the writer writes, our own reader reads as the same language.</summary>
public sealed class WriterTests
{
    [Theory]
    [InlineData("public <a> = yes | no;")]
    [InlineData("public <a> = [please] (open | close) [the] <b>; <b> = door | window;")]
    [InlineData("public <a> = /10/ small | /0.00001/ large {1};")]
    [InlineData("public <a> = \"C++\" | \"say \\\"so\\\"\" | \"a;b\";")]
    [InlineData("public <a> = go <NULL> {1} | {2} [on] | stop <VOID> | <VOID>;")]
    [InlineData("public <a> = yes; public <b> = no <a>; <root> = x;")]
    public void A_small_grammar_has_the_same_sentences(string body) => SameSentences(Texts.Body(body));

    [Theory]
    [InlineData("values", "temperature_value")]
    [InlineData("values", "oxygen_value")]
    [InlineData("confirmation", "yes_no")]
    [InlineData("confirmation", "respirations")]
    [InlineData("phrases", "command")]
    [InlineData("phrases", "not_taken")]
    [InlineData("handover", null)]
    public void A_product_grammar_has_the_same_sentences(string grammar, string? rule) => SameSentences(ProductGrammars.Load(grammar, rule));

    [Theory]
    [MemberData(nameof(ProductGrammars.Listened), MemberType = typeof(ProductGrammars))]
    public void Sentences_drawn_from_either_side_are_sentences_of_the_other(string grammar, string? rule)
    {
        Grammar original = ProductGrammars.Load(grammar, rule);
        Grammar written = Written(original);
        var random = new Random(20268);
        for (int i = 0; i < 200; i++)
        {
            string there = Sampler.Draw(original, random);
            Matcher.Match(written, there).Count.ShouldBe(1, there);
            Matcher.Match(original, Sampler.Draw(written, random)).Count.ShouldBe(1);
        }
    }

    [Fact]
    public void Weights_are_written()
    {
        var choices = (AlternativesExpansion)Written(Texts.Body("public <a> = /10/ small | /0.00001/ large;")).Root.Body;
        choices.Weights.ShouldBe([10, 0.00001]);
    }

    [Fact]
    public void Repetitions_are_written()
    {
        Grammar written = Written(Texts.Body("public <a> = very+ [so | quite] (and on)* {1};"));
        Matcher.Match(written, "very very quite and on and on").Count.ShouldBe(1);
        Matcher.Match(written, "very").Count.ShouldBe(1);
        Matcher.Match(written, "quite").ShouldBeEmpty();
    }

    [Fact]
    public void The_text_of_the_answer_grammar() => Golden.Match(JsgfWriter.Write(ProductGrammars.Load("confirmation", "yes_no")));

    private static void SameSentences(Grammar grammar) =>
        Sampler.All(Written(grammar)).Select(s => s.Words).ToHashSet().SetEquals(Sampler.All(grammar).Select(s => s.Words)).ShouldBeTrue();

    private static Grammar Written(Grammar grammar) => Grammar.Parse(JsgfWriter.Write(grammar), "written.jsgf");
}
