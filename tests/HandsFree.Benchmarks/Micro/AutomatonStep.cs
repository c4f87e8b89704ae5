using BenchmarkDotNet.Attributes;
using HandsFree.Language.Automata;
using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using HandsFree.Speech.Neural;

namespace HandsFree.Benchmarks.Micro;

/// <summary>Walking "blood pressure one eighteen over seventy six" through automata that were walked before, and that were not.</summary>
public class AutomatonStep
{
    private const string Sentence = "blood pressure one eighteen over seventy six";
    private static readonly string[] Words = Sentence.Split(' ');
    private Grammar readings = null!;
    private Vocabulary tokens = null!;
    private WrittenAutomaton written = null!;

    /// <summary>Before the clock runs.</summary>
    [GlobalSetup]
    public void Setup()
    {
        readings = StateGrammars.Readings();
        tokens = StateGrammars.Tokens();
        written = new(readings, tokens);
        WordsWarm();
        TokensWarm();
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

    /// <summary>The neural engine's steps: each state's allowed tokens, eight steps along the first token.</summary>
    [Benchmark]
    public int TokensWarm() => Walk(written);

    /// <summary>The same through a new automaton.</summary>
    [Benchmark]
    public int TokensCold() => Walk(new(readings, tokens));

    private static int Walk(WrittenAutomaton automaton)
    {
        const int Steps = 8;
        int allowed = 0;
        WrittenNode at = automaton.Start;
        for (int step = 0; step < Steps; step++)
        {
            var next = automaton.Tokens(at);
            allowed += next.Length;
            if (next.Length == 0)
            {
                break;
            }

            at = next[0].Node;
        }

        return allowed;
    }
}
