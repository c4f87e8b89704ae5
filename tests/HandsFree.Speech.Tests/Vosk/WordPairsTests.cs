using HandsFree.Language.Grammars;
using HandsFree.Speech.Vosk;
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
}
