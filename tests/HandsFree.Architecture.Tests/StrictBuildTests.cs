using Shouldly;
using Xunit;

namespace HandsFree.Architecture.Tests;

public sealed class StrictBuildTests
{
    [Theory]
    [InlineData("P:System.DateTime.Now")]
    [InlineData("P:System.DateTime.UtcNow")]
    [InlineData("P:System.DateTime.Today")]
    [InlineData("P:System.DateTimeOffset.Now")]
    [InlineData("P:System.DateTimeOffset.UtcNow")]
    [InlineData("P:System.TimeZoneInfo.Local")]
    [InlineData("M:System.Guid.NewGuid")]
    [InlineData("M:System.Guid.CreateVersion7")]
    [InlineData("P:System.Random.Shared")]
    [InlineData("M:System.Random.#ctor")]
    [InlineData("M:System.Threading.Thread.Sleep(System.Int32)")]
    [InlineData("M:System.Threading.Thread.Sleep(System.TimeSpan)")]
    [InlineData("M:System.Threading.Tasks.Task.Delay(System.Int32)")]
    [InlineData("M:System.Threading.Tasks.Task.Delay(System.TimeSpan)")]
    [InlineData("M:System.Environment.Exit(System.Int32)")]
    public void What_hides_time_chance_or_an_end_is_banned_with_a_reason(string symbol)
    {
        string line = RepositoryFiles.Read("BannedSymbols.txt").Split('\n').Single(each => each.StartsWith(symbol + ";", StringComparison.Ordinal));

        line[(symbol.Length + 1)..].Trim().ShouldNotBeEmpty();
    }

    [Fact]
    public void The_ban_holds_in_every_project_and_breaks_the_build()
    {
        string properties = RepositoryFiles.Read("Directory.Build.props");
        properties.ShouldContain("Include=\"Microsoft.CodeAnalysis.BannedApiAnalyzers\"");
        properties.ShouldContain("BannedSymbols.txt");
        RepositoryFiles.Read(".editorconfig").ShouldContain("dotnet_diagnostic.RS0030.severity = error");
        RepositoryFiles.Read("tests/Directory.Build.props").ShouldContain("../Directory.Build.props");
    }

    [Theory]
    [InlineData("<Nullable>enable</Nullable>")]
    [InlineData("<TreatWarningsAsErrors>true</TreatWarningsAsErrors>")]
    [InlineData("<AnalysisLevel>latest</AnalysisLevel>")]
    [InlineData("<InvariantGlobalization>true</InvariantGlobalization>")]
    public void The_plain_build_is_the_strict_build(string setting) =>
        RepositoryFiles.Read("Directory.Build.props").ShouldContain(setting);

    [Fact]
    public void No_project_loosens_it()
    {
        string[] loosening = ["TreatWarningsAsErrors", "<Nullable>", "AnalysisLevel", "AnalysisMode", "RunAnalyzers", "WarningLevel"];

        Project.All.Where(project => loosening.Any(RepositoryFiles.Read(project.FilePath).Contains))
            .Select(project => project.Name).ShouldBeEmpty();
    }
}
