using HandsFree.Language.Meaning;
using HandsFree.Language.Sentences;
using HandsFree.Language.Tests.Spoken;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Language.Tests.Sentences;

/// <summary>The texts of the synthetic recordings: a grammar must be able to say what they say. The first letter of a file names the
/// state in which it is heard. Words that our design does not use mean nothing, and so do yes, no and save while readings are heard; a
/// guess may be recognised as one; the table writes a question about a room as its words.</summary>
public sealed class RecordedSentenceTests
{
    private static readonly string[] Unused = ["correct", "regular", "scratch"];

    [Theory]
    [InlineData("dictation-synthetic")]
    [InlineData("dialogue-synthetic")]
    public void What_the_recordings_say_means_what_their_table_says(string folder)
    {
        var wrong = new List<string>();
        foreach (string[] row in File.ReadLines(Path.Combine(Shared.Audio(folder), "transcripts.tsv")).Skip(1).Select(l => l.Split('\t')))
        {
            var (file, words, meaning) = (row[0], row[2], row[3]);
            IReadOnlyList<SemanticValue> found = Matcher.Match(ProductGrammars.Load(Grammar(file[0])), words);
            if (!Fits(words, meaning, found))
            {
                wrong.Add($"{file} \"{words}\": {string.Join(" or ", found)} instead of {meaning}");
            }
        }

        wrong.ShouldBeEmpty();
    }

    private static bool Fits(string words, string meaning, IReadOnlyList<SemanticValue> found)
    {
        var table = (SemanticRecord)Means.Json(meaning);
        if (words.Split(' ').Any(Unused.Contains))
        {
            return found.Count == 0;
        }

        return table["kind"]?.ToString() switch
        {
            "\"none\"" => found.All(f => f.Equals(Means.Json("""{"hedge": true}"""))),
            "\"command\"" when words is "yes" or "no" or "save" => found.Count == 0,
            "\"command\"" => found.Single() is SemanticRecord { Fields: [var field] } && field.Value.Equals(table["value"]),
            _ => found.Single().Equals(table) || (found.Single() is SemanticRecord { } room && room["query"] is SemanticText { Value: "room" }
                && table.Equals(Means.Record(("query", new SemanticText(words))))),
        };
    }

    private static string Grammar(char letter) => letter switch
    {
        'i' => "identity",
        'y' or 'n' => "confirmation",
        'k' => "count",
        'v' => "handover",
        _ => "readings",
    };
}
