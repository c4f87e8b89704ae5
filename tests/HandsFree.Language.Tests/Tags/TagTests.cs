using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using HandsFree.Language.Tests.Jsgf;
using Shouldly;
using Xunit;

namespace HandsFree.Language.Tests.Tags;

public sealed class TagTests
{
    private const string Numbers = " <one> = one {1}; <two> = two {2}; <name> = ann {'Ann'}; <pair> = both { x = 1; y = 2 }; <more> = more { y = 3; z = 4 };";

    [Theory]
    [InlineData("1 + 2", "3")]
    [InlineData("7 - 2 - 1", "4")]
    [InlineData("2 + 3 * 4", "14")]
    [InlineData("(2 + 3) * 4", "20")]
    [InlineData("12 / 4 / 3", "1")]
    [InlineData("98 + 6 / 10", "98.6")]
    [InlineData("0.1 + 0.2", "0.3")]
    [InlineData("1 / 8", "0.125")]
    [InlineData("'a' & 'b' & 3", "\"ab3\"")]
    [InlineData("'n' & (1 + 2)", "\"n3\"")]
    [InlineData("'a' & true & null", "\"atruenull\"")]
    [InlineData("true", "true")]
    [InlineData("false", "false")]
    [InlineData("null", "null")]
    [InlineData("''", "\"\"")]
    [InlineData("'say \"so\"'", "\"say \\\"so\\\"\"")]
    [InlineData("[1, 'a', [true, null]]", "[1, \"a\", [true, null]]")]
    [InlineData("$", "null")]
    [InlineData("$ + 1", "1")]
    [InlineData("$ & 'x'", "\"x\"")]
    [InlineData("1; $ + 1; $ * 10", "20")]
    [InlineData("a = 1", "{\"a\": 1}")]
    [InlineData("a = 1; 'not taken' = 'so'; c = null", "{\"a\": 1, \"not taken\": \"so\", \"c\": null}")]
    [InlineData("a = 1; a = 2", "{\"a\": 2}")]
    [InlineData("a = [$]", "{\"a\": []}")]
    [InlineData("a = 1; 5", "5")]
    public void A_tag_means(string tag, string meaning) => Texts.Meaning($"public <a> = go {{ {tag} }};", "go").ShouldBe(meaning);

    [Theory]
    [InlineData("<one> <two> { 10 * $one + $two }", "one two", "12")]
    [InlineData("<one> { $one } [<two> { $ * 10 + $two }]", "one", "1")]
    [InlineData("<one> { $one } [<two> { $ * 10 + $two }]", "one two", "12")]
    [InlineData("[<two>] <one> { $two + $one }", "one", "1")]
    [InlineData("[<two>] <one> { [$two, $one] }", "one", "[1]")]
    [InlineData("[<two>] <one> { a = $two; b = $one }", "one", "{\"b\": 1}")]
    [InlineData("[<name>] go { $name & '!' }", "go", "\"!\"")]
    [InlineData("(<one> { $ & $one })+", "one one one", "\"111\"")]
    [InlineData("(<one> { $ + $one })+", "one one one", "3")]
    public void Values_of_rules_are_used(string body, string words, string meaning) =>
        Texts.Meaning($"public <a> = {body};" + Numbers, words).ShouldBe(meaning);

    [Theory]
    [InlineData("<one>", "one", "1")]
    [InlineData("please <one>", "please one", "1")]
    [InlineData("<one> <two>", "one two", "2")]
    [InlineData("<pair>", "both", "{\"x\": 1, \"y\": 2}")]
    [InlineData("<pair> <more>", "both more", "{\"x\": 1, \"y\": 3, \"z\": 4}")]
    [InlineData("<pair> { w = 0 }", "both", "{\"x\": 1, \"y\": 2, \"w\": 0}")]
    [InlineData("<pair> { x = 9 }", "both", "{\"x\": 9, \"y\": 2}")]
    [InlineData("<pair> { p = $pair }", "both", "{\"p\": {\"x\": 1, \"y\": 2}}")]
    [InlineData("<pair> { 7 }", "both", "7")]
    [InlineData("go | stop {1}", "go", "null")]
    public void A_value_passes_through_and_records_are_joined(string body, string words, string meaning) =>
        Texts.Meaning($"public <a> = {body};" + Numbers, words).ShouldBe(meaning);

    [Fact]
    public void Without_any_tag_a_sentence_means_its_own_words() =>
        Texts.Meaning("public <a> = please [do] <b>; <b> = stop | go;", "please do go").ShouldBe("\"please do go\"");

    [Fact]
    public void Records_are_equal_whatever_the_order_of_their_fields() =>
        Matcher.Match(Texts.Body("public <a> = go { x = 1; y = 2 } | go { y = 2; x = 1 };"), "go").Count.ShouldBe(1);

    [Fact]
    public void A_brace_in_a_tag_is_written_with_a_backslash() =>
        Texts.Meaning("public <a> = go { '\\}' };", "go").ShouldBe("\"}\"");

    [Theory]
    [InlineData("1 / 0", "1 can't be divided by 0")]
    [InlineData("'a' + 1", "\"a\" is no number")]
    [InlineData("[1] * 2", "[1] is no number")]
    [InlineData("79228162514264337593543950335 * 10", "79228162514264337593543950335 * 10 is too large; a number has at most 28 digits")]
    public void A_tag_that_cannot_be_computed_is_named_with_its_place(string tag, string error) =>
        Should.Throw<GrammarException>(() => Texts.Meaning($"public <a> = go {{ {tag} }};", "go")).Message.ShouldBe("test.jsgf:3:17: " + error);
}
