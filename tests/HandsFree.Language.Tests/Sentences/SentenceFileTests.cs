using HandsFree.Language.Meaning;
using HandsFree.Language.Sentences;
using Shouldly;
using Xunit;

namespace HandsFree.Language.Tests.Sentences;

/// <summary>The sentences beside the grammars: what must match and what must not.</summary>
public sealed class SentenceFileTests
{
    public static TheoryData<string> Files =>
        [.. Directory.GetFiles(ProductGrammars.Folder, "*.sentences.txt").Select(p => Path.GetFileName(p)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Files))]
    public void Sentences_mean_what_is_written_beside_them_and_the_others_mean_nothing(string file)
    {
        var wrong = new List<string>();
        foreach (SentenceLine line in SentenceFile.Read(Path.Combine(ProductGrammars.Folder, file)))
        {
            IReadOnlyList<SemanticValue> found = Matcher.Match(ProductGrammars.Load(file.Split('.')[0], line.Rule), line.Words);
            IEnumerable<SemanticValue> wanted = line.Meaning is null ? [] : [line.Meaning];
            if (!found.SequenceEqual(wanted))
            {
                wrong.Add($"{file}:{line.Line}: {line.Words} means {(found.Count == 0 ? "nothing" : string.Join(" or ", found))}");
            }
        }

        wrong.ShouldBeEmpty();
    }

    [Fact]
    public void Every_grammar_and_rule_that_is_listened_for_has_sentences_of_both_sorts()
    {
        foreach (var (grammar, rule) in ProductGrammars.All)
        {
            var lines = SentenceFile.Read(Path.Combine(ProductGrammars.Folder, grammar + ".sentences.txt")).Where(l => l.Rule == rule).ToList();
            lines.ShouldContain(l => l.Meaning != null, $"{grammar} {rule}");
            lines.ShouldContain(l => l.Meaning == null, $"{grammar} {rule}");
        }
    }
}
