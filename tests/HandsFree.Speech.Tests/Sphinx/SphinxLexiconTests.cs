using HandsFree.Language.Grammars;
using HandsFree.Speech.Sphinx;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Sphinx;

public sealed class SphinxLexiconTests
{
    public SphinxLexiconTests() => Assert.SkipWhen(SphinxRecognizer.WhyNot(new()) is not null, SphinxRecognizer.WhyNot(new()) ?? "");

    [Theory]
    [InlineData("readings")]
    [InlineData("value")]
    [InlineData("identity")]
    [InlineData("confirmation")]
    [InlineData("count")]
    [InlineData("handover")]
    public void Every_grammar_of_the_product_can_be_listened_for(string name)
    {
        using var engine = new SphinxRecognizer(new());
        engine.Prepare(Grammar.Load(Path.Combine(Shared.Repository, "grammars", name + ".jsgf")));
    }

    [Fact]
    public void Words_without_a_pronunciation_are_named_all_of_them()
    {
        using var engine = new SphinxRecognizer(new());
        Grammar grammar = Grammar.Parse("#JSGF V1.0; grammar g; public <x> = pulse | zzyzzx | qqqw;", "g.jsgf");
        string message = Should.Throw<GrammarException>(() => engine.Prepare(grammar)).Message;
        message.ShouldStartWith("the grammar g: sphinx has no pronunciation of \"qqqw\", \"zzyzzx\"; add it to ");
    }

    [Fact]
    public void Every_pronunciation_of_ours_is_one_that_the_model_can_take()
    {
        using SphinxDecoder decoder = SphinxDecoder.Start(new SphinxOptions().AcousticModel, dictionary: null, []).ShouldNotBeNull();
        foreach (string word in SphinxLexicon.Parse(SphinxData.Read("pronunciations.dict")).Select(g => g.Key))
        {
            Grammar one = Grammar.Parse($"#JSGF V1.0; grammar g; public <x> = {word};", "g.jsgf");
            Should.NotThrow(() => SphinxLexicon.Complete(decoder, one), word);
            decoder.Knows(word).ShouldBeTrue(word);
        }
    }

    [Fact]
    public void More_grammars_than_are_kept_compiled_can_still_be_used_in_turn()
    {
        using var engine = new SphinxRecognizer(new());
        Grammar[] many = [.. Enumerable.Range(0, 30).Select(i => Grammar.Parse($"#JSGF V1.0; grammar g{i}; public <x> = pulse | stop;", $"g{i}.jsgf"))];
        foreach (Grammar grammar in (Grammar[])[.. many, many[0], many[29], many[5]])
        {
            Should.NotThrow(() => engine.Prepare(grammar));
        }
    }
}
