using BenchmarkDotNet.Attributes;
using HandsFree.Language.Automata;
using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;

namespace HandsFree.Benchmarks.Micro;

/// <summary>Walking "blood pressure one eighteen over seventy six" through automata that were walked before, and that were not.</summary>
public class AutomatonStep
{
    private const string Sentence = "blood pressure one eighteen over seventy six";
    private static readonly string[] Words = Sentence.Split(' ');
    private Grammar readings = null!;

    /// <summary>Before the clock runs.</summary>
    [GlobalSetup]
    public void Setup()
    {
        readings = StateGrammars.Readings();
        WordsWarm();
    }

    /// <summary>Seven words through the grammar's own automaton, to the meanings.</summary>
    [Benchmark]
    public int WordsWarm() => Matcher.Match(readings, Sentence).Count;

    /// <summary>The same through a new automaton: what the first hearing pays.</summary>
    [Benchmark]
    public int WordsCold()
    {
        WordAutomaton automaton = new(readings);
        HashSet<Configuration> at = [automaton.Start];
        foreach (string word in Words)
        {
            at = [.. at.SelectMany(c => automaton.Next(c).Arcs).Where(a => a.Word == word).Select(a => a.Target)];
        }

        return at.Sum(c => automaton.Next(c).Meanings.Length);
    }
}
