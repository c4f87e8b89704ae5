using HandsFree.Language.Grammars;
using HandsFree.Speech.Sphinx;
using HandsFree.Speech.Tests.Contract;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Sphinx;

/// <summary>What the phone loop is for.</summary>
public sealed class SphinxRefusalTests
{
    [Theory]
    [InlineData("what time is lunch today")]
    [InlineData("my daughter is coming on sunday")]
    [InlineData("please close the window")]
    public void Speech_that_is_no_sentence_of_the_grammar_is_no_reading(string words)
    {
        Assert.SkipWhen(SphinxRecognizer.WhyNot(new()) is not null, SphinxRecognizer.WhyNot(new()) ?? "");
        using var engine = new SphinxRecognizer(new());
        Grammar grammar = Grammar.Load(Path.Combine(Shared.Repository, "grammars", "value.jsgf"), "pulse");
        Hearing hearing = engine.Hear(Spoken.ByFlite(words), grammar);
        hearing.Outcome.ShouldBeOneOf([HearingOutcome.NoReading, HearingOutcome.Nothing], hearing.Transcript);
    }
}
