using HandsFree.Language.Grammars;

namespace HandsFree.Speech.Neural;

/// <summary>The automata of the grammars that were listened with lately. They grow with every utterance, so that only so many states are kept
/// in all; the grammar that was not used for longest is forgotten first and made anew when it comes again.</summary>
/// <param name="vocabulary">The tokens.</param>
/// <param name="mostStates">States of all of them together; the last one used is kept while it alone is within that.</param>
internal sealed class WrittenAutomata(Vocabulary vocabulary, int mostStates = 20_000)
{
    private readonly List<(Grammar Grammar, WrittenAutomaton Automaton)> latestFirst = [];

    /// <summary>How many grammars are kept.</summary>
    public int Count => latestFirst.Count;

    /// <summary>The automaton of a grammar, which is now the latest.</summary>
    public WrittenAutomaton Of(Grammar grammar)
    {
        int at = latestFirst.FindIndex(kept => kept.Grammar == grammar);
        bool isKept = at >= 0 && latestFirst[at].Automaton.Size <= mostStates;
        WrittenAutomaton automaton = isKept ? latestFirst[at].Automaton : new(grammar, vocabulary);
        if (at >= 0)
        {
            latestFirst.RemoveAt(at);
        }

        latestFirst.Insert(0, (grammar, automaton));
        while (latestFirst.Count > 1 && latestFirst.Sum(kept => kept.Automaton.Size) > mostStates)
        {
            latestFirst.RemoveAt(latestFirst.Count - 1);
        }

        return automaton;
    }
}
