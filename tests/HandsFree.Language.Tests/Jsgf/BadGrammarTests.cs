using HandsFree.Language.Grammars;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Language.Tests.Jsgf;

/// <summary>Each file Bad/NAME.jsgf gives the error of Bad/NAME.error.txt, with file, line, column and what was expected.</summary>
public sealed class BadGrammarTests
{
    private static readonly string Folder = Path.Combine(Shared.Repository, "tests", "HandsFree.Language.Tests", "Bad");

    public static TheoryData<string> Names =>
        [.. Directory.GetFiles(Folder, "*.error.txt").Select(p => Path.GetFileName(p)[..^".error.txt".Length]).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_broken_grammar_says_where_and_what_was_expected(string name) =>
        Should.Throw<GrammarException>(() => Grammar.Load(Path.Combine(Folder, name + ".jsgf")))
            .Message.ShouldBe(File.ReadAllText(Path.Combine(Folder, name + ".error.txt")).TrimEnd('\n'));

    [Fact]
    public void Every_broken_grammar_has_its_error_beside_it() =>
        Directory.GetFiles(Folder, "*.jsgf").Select(Path.GetFileNameWithoutExtension)
            .Except(Directory.GetFiles(Folder, "*.error.txt").Select(p => Path.GetFileName(p)[..^".error.txt".Length]))
            .Order(StringComparer.Ordinal)
            .ShouldBe(["misnamed", "shared"]);

    [Fact]
    public void A_file_that_is_not_there_is_named()
    {
        string path = Path.Combine(Folder, "missing.jsgf");
        Should.Throw<GrammarException>(() => Grammar.Load(path)).Message.ShouldStartWith($"{path}: can't be read (");
    }

    [Fact]
    public void A_rule_to_listen_for_that_is_not_there_is_named() =>
        Should.Throw<GrammarException>(() => Grammar.Load(Path.Combine(Folder, "shared.jsgf"), "third"))
            .Message.ShouldBe("shared.jsgf:1:1: expected a rule <third>; there is none");

    [Fact]
    public void The_place_can_be_read_from_the_exception() =>
        Should.Throw<GrammarException>(() => Grammar.Load(Path.Combine(Folder, "unclosed_group.jsgf")))
            .At.ShouldBe(new SourcePosition("unclosed_group.jsgf", 3, 23));
}
