using System.Text.Json;
using Shouldly;
using Xunit;

namespace HandsFree.Architecture.Tests.Attacks;

/// <summary>The attack: a package of the same name and version with another content, or an older version of one, slipped in by the source
/// that packages come from.</summary>
public sealed class ChangedPackageTests
{
    public static TheoryData<string> Projects => [.. Project.All.Select(project => project.FilePath)];

    [Theory]
    [MemberData(nameof(Projects))]
    public void Every_project_says_of_every_package_its_version_and_the_hash_of_its_content(string project)
    {
        string file = project[..(project.LastIndexOf('/') + 1)] + "packages.lock.json";
        RepositoryFiles.Text.ShouldContain(file);
        using JsonDocument locked = JsonDocument.Parse(RepositoryFiles.Read(file));
        JsonProperty[] packages =
        [
            .. locked.RootElement.GetProperty("dependencies").EnumerateObject().SelectMany(framework => framework.Value.EnumerateObject())
                .Where(package => package.Value.GetProperty("type").GetString() != "Project"),
        ];

        packages.ShouldNotBeEmpty();
        packages.ShouldAllBe(package => package.Value.GetProperty("contentHash").GetString()!.Length == 88); // SHA-512 in base 64
        packages.ShouldAllBe(package => package.Value.GetProperty("resolved").GetString()!.Length > 0);
    }

    [Theory]
    [InlineData("<RestorePackagesWithLockFile>true</RestorePackagesWithLockFile>")]
    [InlineData("<NuGetAudit>true</NuGetAudit>")]
    [InlineData("<NuGetAuditMode>all</NuGetAuditMode>")]
    public void The_build_keeps_the_locks_and_asks_for_known_holes(string setting) =>
        RepositoryFiles.Read("Directory.Build.props").ShouldContain(setting);

    [Fact]
    public void No_project_tolerates_a_package_other_than_the_one_that_was_asked_for()
    {
        foreach (string file in (string[])["Directory.Build.props", "tests/Directory.Build.props", .. Project.All.Select(project => project.FilePath)])
        {
            RepositoryFiles.Read(file).ShouldNotContain("NU1", Case.Sensitive, file);
        }
    }

    [Fact]
    public void The_whole_check_and_a_release_restore_nothing_else()
    {
        RepositoryFiles.Text.ShouldContain("scripts/release/folder.sh");
        RepositoryFiles.Read("scripts/release/folder.sh").ShouldContain("-p:RestoreLockedMode=true");
        RepositoryFiles.Read(".ci/run").ShouldContain("dotnet restore HandsFree.sln --locked-mode");
    }
}
