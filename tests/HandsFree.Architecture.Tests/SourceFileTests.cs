using System.Text.RegularExpressions;
using Shouldly;
using Xunit;

namespace HandsFree.Architecture.Tests;

public sealed partial class SourceFileTests
{
    private const int MostLines = 350;

    // Put together here, so that this file doesn't hold what it looks for.
    public static TheoryData<string> Unwanted =>
    [
        "TO" + "DO",
        "FIX" + "ME",
        "NotImplemented" + "Exception",
        "seed " + "document",
        "/wo" + "rk/",
        "/ro" + "ot/",
        "/tmp/bash" + "_jobs",
        "nuget" + ".org",
        "npmjs" + ".",
        "pypi" + ".org",
        "python" + "hosted",
        "deb" + ".debian.org",
    ];

    private static IEnumerable<string> Code => RepositoryFiles.Text.Where(path => path.EndsWith(".cs", StringComparison.Ordinal));

    [Fact]
    public void There_are_files_to_look_at()
    {
        Code.Count().ShouldBeGreaterThan(50);
        RepositoryFiles.Text.ShouldContain("handsfree");
        RepositoryFiles.Text.ShouldContain(".ci/run");
        RepositoryFiles.Text.ShouldContain("src/HandsFree.App/HandsFree.App.csproj");
    }

    [Fact]
    public void No_file_of_code_is_longer_than_350_lines()
    {
        string[] endings = [".cs", ".sh", ".ps1", ".cmd", ".jsgf"];

        RepositoryFiles.Text.Where(path => endings.Contains(Path.GetExtension(path)))
            .Where(path => RepositoryFiles.Read(path).Count(sign => sign == '\n') > MostLines)
            .ShouldBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Unwanted))]
    public void No_file_holds(string words) =>
        RepositoryFiles.Text.Where(path => RepositoryFiles.Read(path).Contains(words, StringComparison.OrdinalIgnoreCase)).ShouldBeEmpty();

    [Fact]
    public void No_catch_is_empty() => Code.Where(path => EmptyCatch().IsMatch(RepositoryFiles.Read(path))).ShouldBeEmpty();

    [Fact]
    public void No_test_is_switched_off() => Code.Where(path => SwitchedOff().IsMatch(RepositoryFiles.Read(path))).ShouldBeEmpty();

    // Each sample is parted, so that this file doesn't hold what it looks for.
    [Fact]
    public void An_empty_catch_and_a_test_that_is_switched_off_are_found()
    {
        EmptyCatch().IsMatch("try { } cat" + "ch (IOException)\n{\n    // fine\n}").ShouldBeTrue();
        EmptyCatch().IsMatch("cat" + "ch { }").ShouldBeTrue();
        EmptyCatch().IsMatch("catch (IOException) when (done)\n{\n    return;\n}").ShouldBeFalse();
        SwitchedOff().IsMatch("[Fa" + "ct(Skip = \"later\")]").ShouldBeTrue();
        SwitchedOff().IsMatch("[Fact]").ShouldBeFalse();
    }

    [GeneratedRegex(@"\bcatch\b[^{;]*\{(\s|//[^\n]*\n)*\}")]
    private static partial Regex EmptyCatch();

    [GeneratedRegex(@"\[\s*(Fact|Theory|Property|InlineData)\s*\([^\]]*\bSkip\s*=")]
    private static partial Regex SwitchedOff();
}
