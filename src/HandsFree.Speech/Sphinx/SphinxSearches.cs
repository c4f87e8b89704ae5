using HandsFree.Language.Grammars;

namespace HandsFree.Speech.Sphinx;

/// <summary>The compiled searches of one decoder, one for each grammar; the one that was used least lately goes first.</summary>
internal sealed class SphinxSearches(SphinxDecoder decoder)
{
    private const int Most = 24;
    private readonly Dictionary<Grammar, string> names = new(ReferenceEqualityComparer.Instance);
    private readonly LinkedList<Grammar> byUse = [];
    private int made;

    /// <summary>Compiles the grammar if it is new.</summary>
    /// <exception cref="GrammarException">A word has no pronunciation, or the decoder refuses the grammar.</exception>
    internal string Ready(Grammar grammar)
    {
        if (names.TryGetValue(grammar, out string? name))
        {
            byUse.Remove(grammar);
            byUse.AddLast(grammar);
            return name;
        }

        SphinxLexicon.Complete(decoder, grammar);
        name = $"g{made++}";
        if (!decoder.AddSearch(name, JsgfWriter.Write(grammar)))
        {
            throw new GrammarException($"the grammar {grammar.Name}: sphinx refused the grammar: it has no public rule or too many ways");
        }

        if (byUse.Count == Most && byUse.First is { } oldest)
        {
            decoder.RemoveSearch(names[oldest.Value]);
            names.Remove(oldest.Value);
            byUse.RemoveFirst();
        }

        names.Add(grammar, name);
        byUse.AddLast(grammar);
        return name;
    }

    /// <summary>Makes the grammar the one that the next utterance is decoded with.</summary>
    internal void Use(Grammar grammar)
    {
        if (!decoder.UseSearch(Ready(grammar)))
        {
            throw new InvalidOperationException($"PocketSphinx lost the search of the grammar {grammar.Name}");
        }
    }
}
