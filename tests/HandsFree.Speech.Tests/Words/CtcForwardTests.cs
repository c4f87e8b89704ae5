using HandsFree.Language.Grammars;
using HandsFree.Language.Meaning;
using HandsFree.Language.Sentences;
using HandsFree.Speech.Words;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Words;

/// <summary>Against counting out every alignment: each path of places through the rows, repetitions and blanks taken out as Graves and
/// others (2006) define it, matched against the grammar as text.</summary>
public sealed class CtcForwardTests
{
    private static readonly string[] Words = ["<x>", "one", "two", "and"];

    public static TheoryData<string> Grammars =>
    [
        "public <s> = one {1} | two {2} | one two {12};",
        "public <s> = one {'short'} | one one {'twice'} | one one one {'thrice'};",
        "public <s> = [and] one {'a'} | and and one {'a'} | two [and] {'b'} | two two {'a'};",
        "<d> = one {1} | two {2}; public <s> = (<d> { $ & $d })+;",
        "public <s> = (one | two) {'either'} | one {'one'};",
    ];

    [Theory]
    [MemberData(nameof(Grammars))]
    public void Every_value_has_the_sum_of_all_its_wordings_and_alignments(string rules)
    {
        Grammar grammar = Grammar.Parse("#JSGF V1.0; grammar small; " + rules, "small.jsgf");
        foreach (int seed in Enumerable.Range(1, 4))
        {
            foreach (int rows in (int[])[1, 2, 5, 6])
            {
                float[] given = Random(rows, seed);
                ForwardResult found = Run(grammar, given, double.PositiveInfinity);
                Dictionary<SemanticValue, double> counted = CountOut(grammar, given, out double unfinished, out double empty);

                found.Dropped.ShouldBe(0);
                found.Empty.ShouldBe(empty, 1e-9);
                found.Unfinished.ShouldBe(unfinished, 1e-9);
                found.Values.Keys.ShouldBe(counted.Keys, ignoreOrder: true);
                foreach (var (meaning, probability) in counted)
                {
                    found.Values[meaning].Probability.ShouldBe(probability, 1e-9, $"{meaning} in {rules}");
                }
            }
        }
    }

    [Theory]
    [InlineData(4, int.MaxValue)]
    [InlineData(double.PositiveInfinity, 9)]
    [InlineData(4, 9)]
    public void What_pruning_takes_away_is_no_more_than_it_says(double beam, int most)
    {
        Grammar grammar = Grammar.Parse("#JSGF V1.0; grammar small; <d> = one {1} | two {2}; public <s> = (<d> { $ & $d })+;", "small.jsgf");
        float[] given = Random(12, 3);
        ForwardResult exact = Run(grammar, given, double.PositiveInfinity);
        ForwardResult pruned = Run(grammar, given, beam, most);

        pruned.Dropped.ShouldBeGreaterThan(0);
        pruned.Values.Count.ShouldBeLessThan(exact.Values.Count);
        double lost = 0;
        foreach (var (meaning, (probability, _)) in exact.Values)
        {
            double kept = pruned.Values.TryGetValue(meaning, out var value) ? value.Probability : 0;
            kept.ShouldBeLessThanOrEqualTo(probability + 1e-12);
            lost += probability - kept;
        }

        lost.ShouldBeLessThanOrEqualTo(pruned.Dropped + 1e-12);
    }

    [Fact]
    public void No_more_ways_than_the_cap_go_on_through_a_grammar_without_end()
    {
        Grammar grammar = Grammar.Parse("#JSGF V1.0; grammar small; <d> = one {1} | two {2}; public <s> = (<d> { $ & $d })+;", "small.jsgf");

        ForwardResult capped = Run(grammar, Random(40, 5), double.PositiveInfinity, 20);

        capped.Values.Count.ShouldBeInRange(1, 20);
    }

    [Fact]
    public void A_whole_sentence_that_may_go_on_is_known()
    {
        Grammar grammar = Grammar.Parse("#JSGF V1.0; grammar small; public <s> = one {1} | one two {12};", "small.jsgf");

        Run(grammar, Certain(0, 2, 0), 16).MayGoOn.ShouldBe(1, 0.01);
        Run(grammar, Certain(2, 0, 3), 16).MayGoOn.ShouldBe(0, 0.01);
        Run(grammar, Certain(2, 0, 3), 16).Values.Values.Max(v => v.Probability).ShouldBe(1, 0.01);
        Run(grammar, Certain(2, 0, 3), 16).Values.Single(v => v.Value.Probability > 0.5).Value.Words.ShouldBe("one two");
    }

    private static ForwardResult Run(Grammar grammar, float[] rows, double beam, int most = int.MaxValue) =>
        CtcForward.Run(rows, Words.Length + 1, new SentenceAutomaton(grammar, w => Array.IndexOf(Words, w) is >= 0 and var at ? at + 1 : null), beam, most);

    private static float[] Random(int rows, int seed)
    {
        var random = new Random(seed);
        float[] values = [.. Enumerable.Range(0, rows * (Words.Length + 1)).Select(_ => (float)(4 * random.NextDouble()))];
        Rows.ToLogProbabilities(values, Words.Length + 1, 1);
        return values;
    }

    /// <summary>Rows that are nearly sure of one place each.</summary>
    private static float[] Certain(params int[] places)
    {
        float[] values = [.. places.SelectMany(p => Enumerable.Range(0, Words.Length + 1).Select(i => i == p ? 12f : 0f))];
        Rows.ToLogProbabilities(values, Words.Length + 1, 1);
        return values;
    }

    private static Dictionary<SemanticValue, double> CountOut(Grammar grammar, float[] rows, out double unfinished, out double empty)
    {
        int width = Words.Length + 1, count = rows.Length / width;
        var sentences = new Dictionary<string, double>(StringComparer.Ordinal);
        for (int path = 0; path < (int)Math.Pow(width, count); path++)
        {
            double probability = 1;
            int before = 0, rest = path;
            List<string> words = [];
            for (int row = 0; row < count; row++, rest /= width)
            {
                int place = rest % width;
                probability *= Math.Exp(rows[(row * width) + place]);
                if (place != before && place != 0)
                {
                    words.Add(Words[place - 1]);
                }

                before = place;
            }

            string text = string.Join(' ', words);
            sentences[text] = sentences.GetValueOrDefault(text) + probability;
        }

        sentences.Values.Sum().ShouldBe(1, 1e-6);
        empty = sentences[""];
        unfinished = sentences.Where(s => Matcher.IsPrefix(grammar, s.Key)).Sum(s => s.Value);
        var values = new Dictionary<SemanticValue, double>();
        foreach (var (text, probability) in sentences)
        {
            IReadOnlyList<SemanticValue> meanings = Matcher.Match(grammar, text);
            foreach (SemanticValue meaning in meanings)
            {
                values[meaning] = values.GetValueOrDefault(meaning) + (probability / meanings.Count);
            }
        }

        return values;
    }
}
