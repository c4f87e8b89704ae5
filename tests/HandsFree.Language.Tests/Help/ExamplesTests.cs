using HandsFree.Language.Grammars;
using HandsFree.Language.Help;
using HandsFree.Language.Sentences;
using HandsFree.Language.Tests.Jsgf;
using HandsFree.Language.Tests.Sentences;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Language.Tests.Help;

public sealed class ExamplesTests
{
    [Theory]
    [MemberData(nameof(ProductGrammars.Listened), MemberType = typeof(ProductGrammars))]
    public void Examples_are_sentences_of_the_grammar(string grammar, string? rule)
    {
        Grammar loaded = ProductGrammars.Load(grammar, rule);
        IReadOnlyList<string> examples = Examples.Of(loaded);
        examples.Count.ShouldBeInRange(3, 8);
        foreach (string example in examples)
        {
            Matcher.Match(loaded, example).Count.ShouldBe(1, example);
        }
    }

    [Theory]
    [MemberData(nameof(ProductGrammars.Listened), MemberType = typeof(ProductGrammars))]
    public void An_example_in_a_comment_is_a_sentence_of_its_rule(string grammar, string? rule)
    {
        foreach (Rule documented in ProductGrammars.Load(grammar, rule).Rules)
        {
            foreach (string example in documented.Examples)
            {
                Matcher.Match(ProductGrammars.Load(documented.Grammar, documented.Name), example).Count.ShouldBe(1, $"<{documented.Name}>: {example}");
            }
        }
    }

    [Fact]
    public void What_options_says_in_every_state() => Golden.Match(string.Join('\n', ProductGrammars.All.Select(l =>
        $"{ProductGrammars.Load(l.Grammar, l.Rule).Name}: {string.Join(", ", Examples.Of(ProductGrammars.Load(l.Grammar, l.Rule)))}")));

    [Theory]
    [InlineData("public <a> = yes | no | maybe so;", "yes,no,maybe so")]
    [InlineData("public <a> = [please] open [the] (garden door | window);", "open window")]
    [InlineData("public <a> = open (/5/ garden door | /1/ window);", "open garden door")]
    [InlineData("public <a> = <b> | <c>; <b> = one | two; <c> = so+ on;", "one,two,so on")]
    [InlineData("public <a> = so and <a> | so;", "so and so,so")]
    [InlineData("public <a> = on <VOID> | go;", "go")]
    [InlineData("public <a> = <b> | <c>; /** @example two */ <b> = one | two; <c> = so;", "two")]
    [InlineData("public <a> = <b> | <c>; /** @example one\n@example two */ <b> = one | two; /** @example so */ <c> = so;", "one,so,two")]
    public void Examples_of_a_small_grammar(string body, string examples) => Examples.Of(Texts.Body(body)).ShouldBe(examples.Split(','));

    [Fact]
    public void No_more_than_asked_for() => Examples.Of(Texts.Body("public <a> = yes | no | maybe so;"), 2).ShouldBe(["yes", "no"]);
}
