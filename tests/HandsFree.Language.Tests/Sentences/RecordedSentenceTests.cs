using HandsFree.Language.Meaning;
using HandsFree.Language.Sentences;
using HandsFree.Language.Tests.Spoken;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Language.Tests.Sentences;

/// <summary>The texts of the synthetic recordings: a grammar must be able to say what they say. The first letter of a file names the
/// state in which it is heard. Words that our design does not use may mean nothing, and never anything else.</summary>
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
            bool unused = words.Split(' ').Any(Unused.Contains);
            if (unused ? found.Count > 0 : meaning.Length == 0 ? found.Any(IsValue) : found.Count != 1 || !found[0].Equals(Means.Json(meaning)))
            {
                wrong.Add($"{file} \"{words}\": {string.Join(" or ", found)} instead of {meaning}");
            }
        }

        wrong.ShouldBeEmpty();
    }

    /// <summary>A sentence that is no reading may be recognised as a guess.</summary>
    private static bool IsValue(SemanticValue meaning) => !meaning.Equals(Means.Json("{\"hedge\": true}"));

    private static string Grammar(char letter) => letter switch
    {
        'i' => "identity",
        'y' or 'n' => "confirmation",
        'k' => "count",
        'v' => "handover",
        _ => "readings",
    };
}
