using BenchmarkDotNet.Attributes;
using HandsFree.Language.Grammars;
using HandsFree.Language.Meaning;
using HandsFree.Speech.Neural;
using HandsFree.Speech.Posterior;

namespace HandsFree.Benchmarks.Micro;

/// <summary>From scores to probabilities of values.</summary>
public class Posterior
{
    private const double Seconds = 2.1, SpeechToNoise = 25;
    private readonly PosteriorParameters parameters = PosteriorParameters.Carried("neural-posterior.json");
    private readonly SearchResult found = new(
        Enumerable.Range(0, 6).ToDictionary(
            i => (SemanticValue)SemanticRecord.Empty.With("kind", new SemanticText("pulse")).With("value", new SemanticNumber(70 + i)),
            i => (LogProbability: -2.0 - i, Words: $"pulse seventy {i}", Written: $"Pulse 7{i}")),
        "Pulse 70", -1.5, -20, false);

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

    /// <summary>Neural: six values and "none of these".</summary>
    [Benchmark]
    public object OfValues() => CalibratedPosterior.Decide(NeuralEvidence.Of(found, Seconds, SpeechToNoise), parameters);

    /// <summary>Sphinx and vosk: five sentences, matched and summed.</summary>
    [Benchmark]
    public object OfSentences() => SentencePosterior.Share(hypotheses, readings, 0.9);
}
