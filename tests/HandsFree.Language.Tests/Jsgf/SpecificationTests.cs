using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using Shouldly;
using Xunit;

namespace HandsFree.Language.Tests.Jsgf;

/// <summary>Grammars after the examples of the JSpeech Grammar Format, W3C Note 05 June 2000 (http://www.w3.org/TR/2000/NOTE-jsgf-20000605/),
/// its section 4 (rules) and its closing section of examples, as far as our subset goes. Not in the subset: text of tags other than
/// our own, zero weights (write VOID).</summary>
public sealed class SpecificationTests
{
    private const string Politeness = """
        #JSGF V1.0;
        grammar com.acme.politeness;
        // Body
        public <startPolite> = (please | kindly | could you | oh mighty computer) *;
        public <endPolite> = [ please | thanks | thank you ];
        """;

    private const string Commands = """
        #JSGF V1.0 ISO8859-1 en;
        grammar com.acme.commands;
        import <com.acme.politeness.startPolite>;
        import <com.acme.politeness.endPolite>;
        /**
         * Basic command.
         * @example please move the window
         * @example open a file
         */
        public <basicCmd> = <startPolite> <command> <endPolite>;
        <command> = <action> <object>;
        <action> = /10/ open |/2/ close |/1/ delete |/1/ move;
        <object> = [the | a] (window | file | menu);
        """;

    [Theory]
    [InlineData("open a window")]
    [InlineData("close file please")]
    [InlineData("oh mighty computer please open a menu")]
    [InlineData("please move the window")]
    [InlineData("could you kindly delete the file thank you")]
    public void Simple_command_and_control(string words) => Matcher.Match(CommandGrammar(), words).Count.ShouldBe(1);

    [Theory]
    [InlineData("please")]
    [InlineData("open window thanks thanks")]
    [InlineData("the window open")]
    public void Simple_command_and_control_says_nothing_else(string words) => Matcher.Match(CommandGrammar(), words).ShouldBeEmpty();

    [Fact]
    public void Documentation_comments_give_examples() =>
        CommandGrammar().Root.Examples.ShouldBe(["please move the window", "open a file"]);

    [Fact]
    public void Resolving_names_by_qualified_names()
    {
        string? Read(string name) => name switch
        {
            "pants" => "#JSGF V1.0; grammar com.acme.pants; public <color> = tan;",
            "shirts" => "#JSGF V1.0; grammar com.acme.shirts; public <color> = white;",
            _ => null,
        };
        string text = "#JSGF V1.0; grammar com.acme.selections; import <com.acme.pants.*>; import <com.acme.shirts.*>; "
            + "<color> = <com.acme.pants.color> | <com.acme.shirts.color>; public <statement> = I like <color>;";
        Sampler.All(Grammar.Parse(text, "selections.jsgf", null, Read)).Select(s => s.Words).ShouldBe(["i like tan", "i like white"]);
    }

    [Fact]
    public void A_sequence_binds_closer_than_alternatives() =>
        Texts.Sentences("public <a> = one hundred | two | three hundred five;").ShouldBe(["one hundred", "two", "three hundred five"]);

    [Fact]
    public void Right_recursion_is_allowed()
    {
        Grammar grammar = Texts.Body("public <command> = <action> | (<action> and <command>); <action> = stop | start | pause;");
        Matcher.Match(grammar, "stop and pause and start").Count.ShouldBe(1);
        Matcher.Match(grammar, "stop and").ShouldBeEmpty();
    }

    [Fact]
    public void Nested_right_recursion_is_allowed()
    {
        Grammar grammar = Texts.Body("public <X> = something | <Y>; <Y> = another <X>;");
        Matcher.Match(grammar, "another another something").Count.ShouldBe(1);
        Matcher.Match(grammar, "another").ShouldBeEmpty();
    }

    [Fact]
    public void Left_recursion_is_refused() =>
        Should.Throw<GrammarException>(() => Texts.Body("public <command> = <action> | (<command> and <action>); <action> = stop;"));

    [Fact]
    public void Null_is_matched_without_a_word_and_void_never() =>
        Texts.Sentences("public <a> = go <NULL> | <VOID> stop;").ShouldBe(["go"]);

    private static Grammar CommandGrammar() => Grammar.Parse(Commands, "commands.jsgf", null, name => name == "politeness" ? Politeness : null);
}
