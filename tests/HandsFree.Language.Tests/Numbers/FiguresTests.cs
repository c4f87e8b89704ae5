using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using HandsFree.Language.Tests.Jsgf;
using HandsFree.Language.Tests.Spoken;
using Shouldly;
using Xunit;

namespace HandsFree.Language.Tests.Numbers;

/// <summary>A grammar without tags means its own words, numbers as figures.</summary>
public sealed class FiguresTests
{
    private static readonly Grammar Words = Texts.Body(
        "public <a> = (a | and | room | point | zero | oh | one | two | three | four | five | six | seven | eight | nine | ten | eleven | twelve "
        + "| thirteen | fourteen | fifteen | sixteen | seventeen | eighteen | nineteen | twenty | thirty | forty | fifty | sixty | seventy "
        + "| eighty | ninety | hundred)+;");

    [Fact]
    public void Every_number_from_0_to_599_in_every_form_means_its_figures()
    {
        for (int value = 0; value <= 599; value++)
        {
            foreach (string form in SpokenNumber.Forms(value))
            {
                Meaning(form).ShouldBe($"\"{value}\"", form);
                Meaning("room " + form).ShouldBe($"\"room {value}\"", form);
            }
        }
    }

    [Theory]
    [InlineData("ninety eight point six", "98 point 6")]
    [InlineData("two ten", "210")]
    [InlineData("seven seventeen fifty seven", "71757")]
    [InlineData("oh seven", "07")]
    [InlineData("room a", "room a")]
    [InlineData("one hundred and a", "100 a")]
    [InlineData("twenty oh five", "2005")]
    public void Words_and_figures_stand_apart_and_figures_together(string words, string meaning) => Meaning(words).ShouldBe($"\"{meaning}\"");

    private static string Meaning(string words) => Matcher.Match(Words, words).Single().ToString();
}
