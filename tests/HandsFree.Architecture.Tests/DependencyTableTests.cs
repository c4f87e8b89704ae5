using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using Shouldly;
using Xunit;

namespace HandsFree.Architecture.Tests;

public sealed class DependencyTableTests
{
    public static TheoryData<string> SourceProjects => [.. Project.Source.Select(project => project.Name)];

    [Fact]
    public void Every_project_under_src_stands_in_the_table()
    {
        Project.Source.Select(project => project.Name).ShouldBeSubsetOf(DependencyTable.Allowed.Keys);
        Project.Source.Count().ShouldBeGreaterThanOrEqualTo(6);
    }

    [Theory]
    [MemberData(nameof(SourceProjects))]
    public void A_project_file_refers_only_to_projects_that_the_table_allows(string name)
    {
        Project project = Project.Source.Single(each => each.Name == name);

        project.ProjectReferences.ShouldBeSubsetOf(DependencyTable.Allowed[name]);
    }

    [Theory]
    [MemberData(nameof(SourceProjects))]
    public void A_built_assembly_refers_only_to_assemblies_that_the_table_allows(string name)
    {
        References(name).Where(each => each.StartsWith("HandsFree", StringComparison.Ordinal))
            .ShouldBeSubsetOf(DependencyTable.Allowed[name]);
    }

    [Theory]
    [MemberData(nameof(SourceProjects))]
    public void No_code_under_src_refers_to_code_under_tests(string name)
    {
        string[] tests = [.. Project.All.Except(Project.Source).Select(project => project.Name)];
        tests.ShouldContain("HandsFree.TestKit");

        Project.Source.Single(each => each.Name == name).ProjectReferences.Intersect(tests).ShouldBeEmpty();
        References(name).Intersect(tests).ShouldBeEmpty();
    }

    [Fact]
    public void Only_the_program_knows_the_container()
    {
        const string Container = "Microsoft.Extensions.DependencyInjection";

        Project.Source.Where(project => project.PackageReferences.Any(package => package.StartsWith(Container, StringComparison.Ordinal)))
            .Select(project => project.Name).ShouldBe([DependencyTable.App]);
        Project.Source.Select(project => project.Name).Where(name => name != DependencyTable.App)
            .Where(name => References(name).Any(each => each.StartsWith(Container, StringComparison.Ordinal)))
            .ShouldBeEmpty();
    }

    [Theory]
    [InlineData("HandsFree.Language")]
    [InlineData("HandsFree.Core")]
    public void The_pure_projects_use_no_package(string name)
    {
        Project.Source.Single(each => each.Name == name).PackageReferences.ShouldBeEmpty();
        References(name).ShouldAllBe(each => each.StartsWith("System.", StringComparison.Ordinal) || each.StartsWith("HandsFree.", StringComparison.Ordinal));
    }

    /// <summary>The names of the assemblies that a built assembly of ours refers to.</summary>
    private static string[] References(string project)
    {
        string assembly = project == DependencyTable.App ? "HandsFree" : project;
        using PEReader file = new(File.OpenRead(Path.Combine(AppContext.BaseDirectory, assembly + ".dll")));
        MetadataReader metadata = file.GetMetadataReader();
        return [.. metadata.AssemblyReferences.Select(handle => metadata.GetString(metadata.GetAssemblyReference(handle).Name))];
    }
}
