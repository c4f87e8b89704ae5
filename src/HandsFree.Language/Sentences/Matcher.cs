using HandsFree.Language.Automata;
using HandsFree.Language.Grammars;
using HandsFree.Language.Meaning;

namespace HandsFree.Language.Sentences;

/// <summary>From text to value.</summary>
public static class Matcher
{
    private static readonly char[] Between = [' ', '\t', '\r', '\n', '-', ','];

    /// <summary>All that the words mean in the grammar; none when they are no sentence of it, more than one only in a grammar that is
    /// ambiguous.</summary>
    /// <param name="grammar">The grammar.</param>
    /// <param name="text">Words in any case, parted by blanks, commas or hyphens; a stop at the end is ignored.</param>
    public static IReadOnlyList<SemanticValue> Match(Grammar grammar, string text) =>
        [.. Walk(grammar, text).SelectMany(c => grammar.Automaton.Next(c).Meanings).Distinct()];

    /// <summary>Whether the words are the beginning of a sentence that is not complete yet.</summary>
    /// <param name="grammar">The grammar.</param>
    /// <param name="text">As in <see cref="Match"/>; no words at all are no beginning.</param>
    public static bool IsPrefix(Grammar grammar, string text)
    {
        IReadOnlyCollection<Configuration> reached = Walk(grammar, text);
        return WordsOf(text).Length > 0
            && reached.All(c => grammar.Automaton.Next(c).Meanings.IsEmpty)
            && reached.Any(c => !grammar.Automaton.Next(c).Arcs.IsEmpty);
    }

    /// <summary>The words of a text, as the grammars write them.</summary>
    public static string[] WordsOf(string text) =>
        text.ToLowerInvariant().Replace('\u2019', '\'').TrimEnd('.', '?', '!', ' ').Split(Between, StringSplitOptions.RemoveEmptyEntries);

    private static HashSet<Configuration> Walk(Grammar grammar, string text)
    {
        HashSet<Configuration> at = [grammar.Automaton.Start];
        foreach (string word in WordsOf(text))
        {
            at = [.. at.SelectMany(c => grammar.Automaton.Next(c).Arcs).Where(a => a.Word == word).Select(a => a.Target)];
        }

        return at;
    }
}
