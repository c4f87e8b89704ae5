using BenchmarkDotNet.Attributes;
using HandsFree.Language.Grammars;
using HandsFree.Speech.Posterior;

namespace HandsFree.Benchmarks.Micro;

/// <summary>From scores to probabilities of values.</summary>
public class Posterior
{
    private readonly WeightedWords[] hypotheses =
        [.. new[] { "two", "three", "four", "five", "six" }.Select((digit, i) => new WeightedWords($"pulse seventy {digit}", -i))];

    private Grammar readings = null!;

    /// <summary>Before the clock runs.</summary>
    [GlobalSetup]
    public void Setup()
    {
        readings = StateGrammars.Readings();
        OfSentences();
    }

    /// <summary>Vosk: five sentences, matched and summed.</summary>
    [Benchmark]
    public object OfSentences() => SentencePosterior.Share(hypotheses, readings, 0.9);
}
