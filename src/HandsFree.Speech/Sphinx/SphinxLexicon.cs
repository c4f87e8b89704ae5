using HandsFree.Language.Grammars;

namespace HandsFree.Speech.Sphinx;

/// <summary>Sees to it that a decoder knows all words of a grammar: those that its dictionary lacks come from
/// Data/pronunciations.dict.</summary>
internal static class SphinxLexicon
{
    private static readonly ILookup<string, string> Ours = Parse(SphinxData.Read("pronunciations.dict"));

    /// <summary>Adds what the decoder lacks.</summary>
    /// <exception cref="GrammarException">A word has no pronunciation anywhere; names all such words.</exception>
    internal static void Complete(SphinxDecoder decoder, Grammar grammar)
    {
        string[] missing = [.. grammar.Words.Where(word => !decoder.Knows(word)).Order(StringComparer.Ordinal)];
        string[] unknown = [.. missing.Where(word => !Ours.Contains(word))];
        if (unknown.Length > 0)
        {
            throw new GrammarException(
                $"the grammar {grammar.Name}: sphinx has no pronunciation of \"{string.Join("\", \"", unknown)}\"; add it to src/HandsFree.Speech/Sphinx/Data/pronunciations.dict or use words of its dictionary");
        }

        foreach (string word in missing)
        {
            int variant = 0;
            foreach (string phones in Ours[word])
            {
                variant++;
                if (!decoder.AddWord(variant == 1 ? word : $"{word}({variant})", phones))
                {
                    throw new InvalidDataException($"pronunciations.dict: \"{word}\" has a phone that the model lacks: {phones}");
                }
            }
        }
    }

    internal static ILookup<string, string> Parse(string text) => text.Split('\n')
        .Select(line => line.Trim())
        .Where(line => line.Length > 0 && line[0] != ';')
        .Select(line => line.Split((char[]?)null, 2, StringSplitOptions.RemoveEmptyEntries))
        .ToLookup(pair => pair[0], pair => pair[1].Trim(), StringComparer.Ordinal);
}
