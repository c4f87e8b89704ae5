using HandsFree.Language.Automata;
using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;

namespace HandsFree.App.Session;

/// <summary>Whether a sentence may go on: "one hundred" may, "yes" may not. It chooses between the endpointer's two time-outs.</summary>
internal static class Continuations
{
    /// <summary>True where the grammar has a longer sentence that begins with these words.</summary>
    public static bool MayGoOn(Grammar grammar, string words)
    {
        HashSet<Configuration> reached = [grammar.Automaton.Start];
        foreach (string word in Matcher.WordsOf(words))
        {
            reached = [.. reached.SelectMany(c => grammar.Automaton.Next(c).Arcs).Where(a => a.Word == word).Select(a => a.Target)];
        }

        return reached.Any(c => !grammar.Automaton.Next(c).Arcs.IsEmpty);
    }
}
