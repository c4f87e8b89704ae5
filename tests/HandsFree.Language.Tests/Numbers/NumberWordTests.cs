using HandsFree.Language.Numbers;
using HandsFree.Language.Tests.Spoken;
using Shouldly;
using Xunit;

namespace HandsFree.Language.Tests.Numbers;

/// <summary>Number words against Humanizer's ToWords() and ToOrdinalWords() (NuGet Humanizer.Core).</summary>
public sealed class NumberWordTests
{
    [Fact]
    public void Every_single_word_number_has_its_value_and_kind()
    {
        int[] single = [.. Enumerable.Range(0, 20), .. Enumerable.Range(2, 8).Select(t => 10 * t)];
        foreach (int value in single)
        {
            NumberKind kind = value switch { < 10 => NumberKind.Digit, < 20 => NumberKind.Teen, _ => NumberKind.Tens };
            NumberWord.Of(SpokenNumber.Words(value)).ShouldBe(new NumberWord(kind, value));
        }
    }

    [Fact]
    public void Every_single_word_ordinal_of_a_date_has_its_value_and_kind()
    {
        foreach (int day in Enumerable.Range(1, 20).Append(30))
        {
            NumberKind kind = day switch { < 10 => NumberKind.OrdinalDigit, < 20 => NumberKind.OrdinalTeen, _ => NumberKind.OrdinalTens };
            NumberWord.Of(SpokenNumber.Ordinal(day)).ShouldBe(new NumberWord(kind, day));
        }
    }

    [Fact]
    public void Digits_are_named()
    {
        Enumerable.Range(0, 10).Select(NumberWord.Digit).ShouldBe(Enumerable.Range(0, 10).Select(SpokenNumber.Words));
        NumberWord.Of("oh").ShouldBe(new NumberWord(NumberKind.Digit, 0));
        NumberWord.Of("hundred").ShouldBe(new NumberWord(NumberKind.Hundred, 100));
    }

    [Theory]
    [InlineData("point")]
    [InlineData("and")]
    [InlineData("a")]
    [InlineData("One")]
    [InlineData("")]
    public void Other_words_are_no_numbers(string word) => NumberWord.Of(word).ShouldBeNull();
}
