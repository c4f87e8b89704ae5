using Shouldly;
using Xunit;

namespace HandsFree.Architecture.Tests;

public sealed class SolutionTests
{
    [Fact]
    public void Every_project_is_in_the_solution()
    {
        string solution = RepositoryFiles.Read("HandsFree.sln").Replace('\\', '/');

        Project.All.Select(project => project.FilePath).Where(path => !solution.Contains($"\"{path}\"", StringComparison.Ordinal)).ShouldBeEmpty();
    }

    [Fact]
    public void Every_project_under_tests_with_tests_in_it_is_run_as_one()
    {
        Project[] tests = [.. Project.All.Where(project => project.PackageReferences.Contains("xunit.v3"))];

        tests.Length.ShouldBeGreaterThanOrEqualTo(7);
        tests.Where(project => project.Property("IsTestProject") != "true" || project.Property("OutputType") != "Exe")
            .Select(project => project.Name).ShouldBeEmpty();
    }

    [Fact]
    public void Every_project_under_src_but_the_program_has_tests_of_its_own()
    {
        string[] tested = [.. Project.All.Select(project => project.Name).Where(name => name.EndsWith(".Tests", StringComparison.Ordinal))];

        Project.Source.Select(project => project.Name).Where(name => name != DependencyTable.App && !tested.Contains(name + ".Tests"))
            .ShouldBeEmpty();
    }

    [Fact]
    public void No_project_names_a_package_version_of_its_own()
    {
        RepositoryFiles.Read("Directory.Packages.props").ShouldContain("<ManagePackageVersionsCentrally>true</ManagePackageVersionsCentrally>");
        Project.All.Where(project => RepositoryFiles.Read(project.FilePath).Contains("Version=", StringComparison.Ordinal))
            .Select(project => project.Name).ShouldBeEmpty();
    }
}
