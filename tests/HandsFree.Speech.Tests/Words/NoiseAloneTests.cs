using HandsFree.Language.Grammars;
using HandsFree.Speech.Words;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Words;

public sealed class NoiseAloneTests
{
    [Theory]
    [InlineData("readings", 0.002)]
    [InlineData("readings", 0.01)]
    [InlineData("readings", 0.1)]
    [InlineData("confirmation", 0.01)]
    [InlineData("confirmation", 0.1)]
    public void White_noise_becomes_no_value(string state, double amplitude)
    {
        Grammar grammar = Grammar.Load(Path.Combine(Shared.Repository, "grammars", state + ".jsgf"));
        using WordsRecognizer engine = WordsRecognizer.Open();
        var random = new Random(7);
        float[] noise = [.. Enumerable.Range(0, 32000).Select(_ => (float)(amplitude * (random.NextDouble() - 0.5)))];

        Hearing hearing = engine.Hear(noise, grammar);

        hearing.Outcome.ShouldBeOneOf([HearingOutcome.Nothing, HearingOutcome.NoReading], $"{hearing.Best} {hearing.Transcript}");
    }
}
