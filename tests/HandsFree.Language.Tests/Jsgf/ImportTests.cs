using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using Shouldly;
using Xunit;

namespace HandsFree.Language.Tests.Jsgf;

public sealed class ImportTests
{
    private const string Colours = "#JSGF V1.0;\ngrammar com.paint.colours;\npublic <warm> = red; public <cold> = blue; <secret> = grey;";
    private const string Flags = "#JSGF V1.0;\ngrammar flags;\nimport <colours.*>;\npublic <flag> = <warm> and <cold>; public <warm> = orange;";

    [Theory]
    [InlineData("import <com.paint.colours.warm>; public <a> = <warm>;", "red")]
    [InlineData("import <colours.*>; public <a> = <warm> | <cold>;", "red,blue")]
    [InlineData("import <colours.*>; public <a> = <colours.warm>;", "red")]
    [InlineData("import <com.paint.colours.*>; public <a> = <com.paint.colours.cold>;", "blue")]
    [InlineData("import <colours.*>; public <a> = <warm>; <warm> = pink;", "pink")]
    [InlineData("import <colours.*>; import <flags.*>; public <a> = <flags.warm> <colours.warm>;", "orange red")]
    [InlineData("import <flags.flag>; public <a> = <flag>;", "orange and blue")]
    public void Imported_rules_are_found_by_their_names(string body, string sentences) =>
        Sampler.All(Texts.Body(body, null, Read)).Select(s => s.Words).ShouldBe(sentences.Split(','));

    [Fact]
    public void Two_grammars_may_import_each_other()
    {
        string? Each(string name) => name == "other" ? "#JSGF V1.0;\ngrammar other;\nimport <test.leaf>;\npublic <b> = very <leaf>;" : null;
        Sampler.All(Texts.Body("import <other.b>; public <a> = <b>; public <leaf> = good;", "a", Each)).Single().Words.ShouldBe("very good");
    }

    [Fact]
    public void A_rule_that_was_not_imported_by_name_is_not_found() =>
        Should.Throw<GrammarException>(() => Texts.Body("import <colours.warm>; public <a> = <cold>;", null, Read))
            .Message.ShouldBe("test.jsgf:3:37: <cold> is not defined here and no import brings it; define it, or import a public rule of that name");

    private static string? Read(string name) => name switch { "colours" => Colours, "flags" => Flags, _ => null };
}
