using BenchmarkDotNet.Attributes;
using HandsFree.Language.Automata;
using HandsFree.Language.Grammars;

namespace HandsFree.Benchmarks.Micro;

/// <summary>From the file of the largest state to what an engine walks.</summary>
public class GrammarCompile
{
    private Grammar readings = null!;

    /// <summary>Before the clock runs.</summary>
    [GlobalSetup]
    public void Setup() => readings = StateGrammars.Readings();

    /// <summary>Reading, parsing and linking the files.</summary>
    [Benchmark]
    public object Load() => StateGrammars.Readings();

    /// <summary>Unfolding the automaton over words as far as two words reach. (All of it is never unfolded: its states carry meanings.)</summary>
    [Benchmark]
    public int UnfoldTwoWords()
    {
        WordAutomaton automaton = new(readings);
        HashSet<Configuration> at = [automaton.Start];
        for (int word = 0; word < 2; word++)
        {
            at = [.. at.SelectMany(c => automaton.Next(c).Arcs).Select(arc => arc.Target)];
        }

        return at.Sum(c => automaton.Next(c).Arcs.Length);
    }
}
