using HandsFree.Language.Grammars;
using Shouldly;
using Xunit;

namespace HandsFree.Language.Tests.Attacks;

/// <summary>The attack: a grammar that is nested until the process has no stack left, which no error can be made of any more.</summary>
public sealed class GrammarsWithoutEndTests
{
    private const string Head = "#JSGF V1.0;\ngrammar deep;\n";

    [Theory]
    [InlineData("(", ")")]
    [InlineData("[", "]")]
    [InlineData("a | (", ")")]
    public void Groups_within_groups_are_refused_with_their_place(string open, string close) =>
        Refused(Head + "public <a> = " + Times(open, 100_000) + "x" + Times(close, 100_000) + ";")
            .ShouldContain("more than 200 groups stand in one another");

    [Fact]
    public void Rules_that_lead_to_rules_are_refused() =>
        Refused(Head + "public <a0> = <a1>;\n" + string.Concat(Enumerable.Range(1, 1_500).Select(i => $"<a{i}> = x <a{i + 1}>;\n")) + "<a1501> = x;")
            .ShouldContain("leads more than 200 groups and rules deep");

    [Fact]
    public void So_are_rules_that_come_round_only_after_a_long_way() =>
        Refused(Head + string.Concat(Enumerable.Range(0, 1_500).Select(i => $"public <a{i}> = x <a{(i + 1) % 1_500}> | y;\n")))
            .ShouldContain("deep");

    [Fact]
    public void Rules_by_the_ten_thousand_are_refused() =>
        Refused(Head + string.Concat(Enumerable.Range(0, 10_000).Select(i => $"public <a{i}> = x;\n"))).ShouldContain("rules with all that it imports");

    [Theory]
    [InlineData("(", ")")]
    [InlineData("[", "]")]
    public void A_tag_that_is_nested_without_end_is_refused(string open, string close) =>
        Refused(Head + "public <a> = x {" + Times(open, 50_000) + "1" + Times(close, 50_000) + "};").ShouldContain("the tag is longer than 1000 characters");

    [Fact]
    public void A_tag_that_adds_without_end_is_refused() =>
        Refused(Head + "public <a> = x {1" + Times("+1", 100_000) + "};").ShouldContain("the tag is longer");

    [Fact]
    public void Grammars_that_import_one_another_without_end_are_refused() =>
        Should.Throw<GrammarException>(() => Grammar.Parse(Importing(0), "g0.jsgf", null, name => Importing(int.Parse(name[1..], System.Globalization.CultureInfo.InvariantCulture))))
            .Message.ShouldContain("imports more than 100 others");

    [Fact]
    public void A_text_of_more_than_a_million_characters_is_refused() => Refused(Head + "public <a> = x;" + new string(' ', 1_000_000)).ShouldContain("longer than 1,000,000 characters");

    [Fact]
    public void What_is_only_deep_is_read_and_understood() =>
        Grammar.Parse(Head + "public <a> = " + Times("(", 190) + "x" + Times(")", 190) + ";", "deep.jsgf").Root.Name.ShouldBe("a");

    private static string Refused(string text) => Should.Throw<GrammarException>(() => Grammar.Parse(text, "deep.jsgf")).Message;

    private static string Importing(int i) => $"#JSGF V1.0;\ngrammar g{i};\nimport <g{i + 1}.*>;\npublic <r{i}> = x;\n";

    private static string Times(string what, int times) => string.Concat(Enumerable.Repeat(what, times));
}
