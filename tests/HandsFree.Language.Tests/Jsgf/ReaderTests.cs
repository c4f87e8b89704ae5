using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using Shouldly;
using Xunit;

namespace HandsFree.Language.Tests.Jsgf;

public sealed class ReaderTests
{
    [Theory]
    [InlineData("<a> = yes;", "yes")]
    [InlineData("<a> = open the door;", "open the door")]
    [InlineData("<a> = yes | no;", "yes,no")]
    [InlineData("<a> = open (door | window);", "open door,open window")]
    [InlineData("<a> = open the door | stop;", "open the door,stop")]
    [InlineData("<a> = [please] stop;", "stop,please stop")]
    [InlineData("<a> = [please | kindly] stop;", "stop,please stop,kindly stop")]
    [InlineData("<a> = [[very] kindly] stop;", "stop,kindly stop,very kindly stop")]
    [InlineData("<a> = /10/ small | /2.5/ medium | /1e-3/ large;", "small,medium,large")]
    [InlineData("<a> = \"New York\" | \"C++\" | \"say \\\"so\\\"\";", "new york,c++,say \"so\"")]
    [InlineData("<a> = YES | That's;", "yes,that's")]
    [InlineData("<a> = yes <NULL>;", "yes")]
    [InlineData("<a> = yes | no <VOID>;", "yes")]
    [InlineData("<a> = yes | <VOID>;", "yes")]
    [InlineData("<a> = <b> <b>; <b> = yes | no;", "yes yes,yes no,no yes,no no")]
    [InlineData("< a > = < b >; <b> = yes;", "yes")]
    [InlineData("<a> = <test.b>; <b> = yes;", "yes")]
    [InlineData("<a> = yes /* not { <now> */ | no; // or = later", "yes,no")]
    [InlineData("<a> = (yes);", "yes")]
    [InlineData("<a>=yes|no;", "yes,no")]
    public void A_rule_says_these_sentences(string body, string sentences) =>
        Texts.Sentences("public " + body).Order(StringComparer.Ordinal).ShouldBe(sentences.Split(',').Order(StringComparer.Ordinal));

    [Theory]
    [InlineData("<a> = so*;", "", "so", "so so", "so so so")]
    [InlineData("<a> = so+;", "so", "so so", "so so so", "so so so so")]
    [InlineData("<a> = (so | la)+;", "so", "la", "so so", "so la")]
    [InlineData("<a> = [so]+;", "", "so", "so so", "so so so")]
    [InlineData("<a> = so and <a> | so;", "so", "so and so", "so and so and so", "so and so and so and so")]
    public void A_rule_that_repeats_matches_as_often_as_wanted(string body, params string[] sentences)
    {
        Grammar grammar = Texts.Body("public " + body);
        foreach (string sentence in sentences)
        {
            Matcher.Match(grammar, sentence).Count.ShouldBe(1, sentence);
        }

        Matcher.Match(grammar, sentences[^1] + " fa").ShouldBeEmpty();
    }

    [Fact]
    public void Plus_does_not_match_nothing() => Matcher.Match(Texts.Body("public <a> = so+;"), "").ShouldBeEmpty();

    [Fact]
    public void Several_public_rules_are_all_listened_for() =>
        Texts.Sentences("public <a> = yes; public <b> = no; <c> = maybe;").Order(StringComparer.Ordinal).ShouldBe(["no", "yes"]);

    [Fact]
    public void A_rule_can_be_chosen_by_name_public_or_not()
    {
        Texts.Sentences("public <a> = yes; <c> = maybe;", "c").ShouldBe(["maybe"]);
        Texts.Body("public <a> = yes; <c> = maybe;", "c").Name.ShouldBe("test#c");
    }

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    [InlineData("\r")]
    public void Lines_may_end_in_three_ways_and_are_counted(string lineEnd)
    {
        string text = "#JSGF V1.0;\n// a comment\ngrammar test;\n/* two\nlines */ public <a> = yes;\n\n<b> = [no;\n".Replace("\n", lineEnd, StringComparison.Ordinal);
        Should.Throw<GrammarException>(() => Grammar.Parse(text, "lines.jsgf")).At.ShouldBe(new SourcePosition("lines.jsgf", 7, 10));
        Sampler.All(Grammar.Parse(text.Replace("[no", "no", StringComparison.Ordinal), "lines.jsgf")).Single().Words.ShouldBe("yes");
    }

    [Fact]
    public void A_byte_order_mark_is_passed_over_and_not_counted()
    {
        Sampler.All(Grammar.Parse("\uFEFF#JSGF V1.0;\ngrammar test;\npublic <a> = yes;", "mark.jsgf")).Single().Words.ShouldBe("yes");
        Should.Throw<GrammarException>(() => Grammar.Parse("\uFEFF#JSGF V1.0; grammar ;", "mark.jsgf")).At.ShouldBe(new SourcePosition("mark.jsgf", 1, 21));
    }

    [Fact]
    public void Weights_are_kept_and_are_1_where_none_is_written()
    {
        var choices = (AlternativesExpansion)Texts.Body("public <a> = /10/ small | /0.5/ medium | large;").Root.Body;
        choices.Weights.ShouldBe([10, 0.5, 1]);
    }

    [Fact]
    public void Words_lists_what_can_be_said_in_the_rules_that_are_reached() =>
        Texts.Body("public <a> = [please] <b>; <b> = Stop | go+; <c> = never;").Words.ShouldBe(["go", "please", "stop"]);

    [Fact]
    public void Examples_come_from_the_comment_before_the_rule()
    {
        Grammar grammar = Texts.Body("/** Opens.\n * @example Open the door\n * @example open it\n */\npublic <a> = open (it | the door);\n<b> = no;");
        grammar.Root.Examples.ShouldBe(["open the door", "open it"]);
        Texts.Body("/** @example yes */ public <a> = <b>; <b> = no;").Rules[1].Examples.ShouldBeEmpty();
    }
}
