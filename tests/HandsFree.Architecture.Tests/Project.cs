using System.Xml.Linq;

namespace HandsFree.Architecture.Tests;

/// <summary>What a project file says.</summary>
internal sealed class Project
{
    private readonly XElement _xml;

    private Project(string path)
    {
        FilePath = path;
        _xml = XElement.Parse(RepositoryFiles.Read(path));
    }

    /// <summary>Every project of the repository.</summary>
    public static IReadOnlyList<Project> All { get; } =
        [.. RepositoryFiles.Text.Where(path => path.EndsWith(".csproj", StringComparison.Ordinal)).Select(path => new Project(path))];

    /// <summary>The projects under src.</summary>
    public static IEnumerable<Project> Source => All.Where(project => project.FilePath.StartsWith("src/", StringComparison.Ordinal));

    public string FilePath { get; }

    public string Name => Path.GetFileNameWithoutExtension(FilePath);

    public IEnumerable<string> ProjectReferences =>
        Included("ProjectReference").Select(path => Path.GetFileNameWithoutExtension(path.Replace('\\', '/')));

    public IEnumerable<string> PackageReferences => Included("PackageReference");

    public string? Property(string name) => _xml.Descendants(name).SingleOrDefault()?.Value;

    private IEnumerable<string> Included(string item) => _xml.Descendants(item).Select(each => each.Attribute("Include")!.Value);
}
