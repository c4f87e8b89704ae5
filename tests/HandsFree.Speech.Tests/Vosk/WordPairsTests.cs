using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using HandsFree.Speech.Vosk;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Vosk;

public sealed class WordPairsTests
{
    [Theory]
    [InlineData("one two three", "one two, two three")]
    [InlineData("[one] two", "one two")]
    [InlineData("one [two] three", "one three, one two, two three")]
    [InlineData("(one | two) three", "one three, two three")]
    [InlineData("one+", "one one")]
    [InlineData("one two* three", "one three, one two, two three, two two")]
    [InlineData("one {1} <other>", "one five, one four, four five")]
    [InlineData("<again>", "one one")]
    public void Every_pair_that_stands_side_by_side_is_found_and_no_other(string rule, string expected)
    {
        Grammar grammar = Grammar.Parse(
            $"#JSGF V1.0; grammar g; public <top> = {rule}; <other> = [four] five; <again> = one [<again>];", "g.jsgf");
        WordPairs.Of(grammar).Select(p => $"{p.First} {p.Second}").ShouldBe(expected.Split(", "), ignoreOrder: true);
    }

    [Theory]
    [InlineData("readings")]
    [InlineData("confirmation")]
    [InlineData("identity")]
    public void Every_sentence_of_a_grammar_of_the_product_is_made_of_its_pairs(string name)
    {
        Grammar grammar = Grammar.Load(Path.Combine(Shared.Repository, "grammars", name + ".jsgf"));
        HashSet<(string, string)> pairs = [.. WordPairs.Of(grammar)];
        var random = new Random(11);
        for (int i = 0; i < 500; i++)
        {
            string[] words = Sampler.Draw(grammar, random).Split(' ');
            words.Zip(words.Skip(1)).Where(pair => !pairs.Contains(pair)).ShouldBeEmpty(string.Join(' ', words));
        }

        pairs.Count.ShouldBeLessThan(10_000, "libvosk has to make a graph of them before each hearing");
    }
}
