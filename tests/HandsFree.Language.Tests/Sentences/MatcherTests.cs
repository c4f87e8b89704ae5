using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using HandsFree.Language.Tests.Jsgf;
using Shouldly;
using Xunit;

namespace HandsFree.Language.Tests.Sentences;

public sealed class MatcherTests
{
    [Theory]
    [InlineData("Pulse, seventy-two.")]
    [InlineData("  PULSE\tseventy  two\r\n")]
    [InlineData("pulse seventy two!")]
    [InlineData("pulse seventy two ?")]
    public void Case_commas_hyphens_and_a_stop_do_not_matter(string text) =>
        Matcher.Match(ProductGrammars.Load("readings"), text).Single().ToString().ShouldBe("{\"kind\": \"pulse\", \"value\": 72}");

    [Fact]
    public void A_typographic_apostrophe_is_an_apostrophe() =>
        Matcher.Match(ProductGrammars.Load("confirmation"), "that\u2019s right").Count.ShouldBe(1);

    [Theory]
    [InlineData("heart", true)]
    [InlineData("blood", true)]
    [InlineData("Blood pressure, one", true)]
    [InlineData("blood pressure one eighteen", true)]
    [InlineData("blood pressure one eighteen over", true)]
    [InlineData("blood pressure one eighteen over seventy", false)]
    [InlineData("pulse", true)]
    [InlineData("pulse seven", true)]
    [InlineData("pulse one hundred", false)]
    [InlineData("pulse one hundred and", true)]
    [InlineData("temperature ninety eight point", true)]
    [InlineData("on", true)]
    [InlineData("lunch", false)]
    [InlineData("pulse lunch", false)]
    [InlineData("", false)]
    [InlineData("...", false)]
    public void A_prefix_is_a_beginning_that_is_not_complete(string words, bool isPrefix) =>
        Matcher.IsPrefix(ProductGrammars.Load("readings"), words).ShouldBe(isPrefix);

    [Theory]
    [InlineData("public <a> = yes <VOID> | no;", "yes")]
    [InlineData("public <a> = so*;", "so")]
    [InlineData("public <a> = so+ much;", "much")]
    public void No_prefix_where_no_sentence_goes_on_or_one_is_complete(string body, string words) =>
        Matcher.IsPrefix(Texts.Body(body), words).ShouldBeFalse();

    [Fact]
    public void Both_meanings_of_an_ambiguous_sentence_are_given() =>
        Matcher.Match(Texts.Body("public <a> = go {1} | go {2};"), "go").Select(m => m.ToString()).Order(StringComparer.Ordinal).ShouldBe(["1", "2"]);

    [Fact]
    public void The_automaton_serves_several_threads_at_once()
    {
        Grammar grammar = Grammar.Load(Path.Combine(ProductGrammars.Folder, "readings.jsgf"));
        Parallel.For(10, 100, pulse =>
            Matcher.Match(grammar, "pulse " + Spoken.SpokenNumber.Words(pulse)).Single().ToString()
                .ShouldBe($"{{\"kind\": \"pulse\", \"value\": {pulse}}}"));
    }
}
