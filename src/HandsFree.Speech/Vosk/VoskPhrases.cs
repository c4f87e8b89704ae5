using System.Text.Encodings.Web;
using System.Text.Json;
using HandsFree.Language.Grammars;

namespace HandsFree.Speech.Vosk;

/// <summary>Makes the phrase list that libvosk takes in place of a grammar. It learns from it which word follows which, no more.</summary>
internal static class VoskPhrases
{
    // The library reads UTF-8; its own reader of escapes is not to be relied on.
    private static readonly JsonSerializerOptions Json = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>A JSON array of the grammar's words and pairs of words, each a phrase, never empty: an empty list ends the process.</summary>
    /// <exception cref="GrammarException">The model lacks words, which it would drop in silence; names all of them.</exception>
    internal static string Make(VoskModel model, Grammar grammar)
    {
        string[] words = [.. grammar.Words.Order(StringComparer.Ordinal)];
        string[] missing = [.. words.Where(word => !model.Knows(word))];
        if (missing.Length > 0)
        {
            throw new GrammarException(
                $"the grammar {grammar.Name}: vosk's model does not know \"{string.Join("\", \"", missing)}\"; use other words in the grammar or another model");
        }

        if (words.Length == 0)
        {
            throw new GrammarException($"the grammar {grammar.Name} has no words for vosk to listen for; give it a rule with words");
        }

        string[] phrases = [.. words, .. WordPairs.Of(grammar).Select(p => $"{p.First} {p.Second}")];
        return JsonSerializer.Serialize(model.Knows(VoskModel.Unknown) ? [.. phrases, VoskModel.Unknown] : phrases, Json);
    }
}
