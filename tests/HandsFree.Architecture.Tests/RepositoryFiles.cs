using HandsFree.TestKit;

namespace HandsFree.Architecture.Tests;

/// <summary>The files of the repository as they lie in the checkout, without what builds and set-up make.</summary>
internal static class RepositoryFiles
{
    private static readonly HashSet<string> NotOurs =
        [".git", ".handsfree", "bin", "obj", "TestResults", "BenchmarkDotNet.Artifacts", ".vs", ".idea"];

    private static readonly HashSet<string> TextEndings =
        [".cs", ".csproj", ".props", ".sln", ".json", ".md", ".txt", ".tsv", ".csv", ".jsgf", ".sh", ".ps1", ".cmd", ".yml", ""];

    /// <summary>Every text file, as a path from the repository's top with forward slashes.</summary>
    public static IReadOnlyList<string> Text { get; } = [.. Under(new DirectoryInfo(Shared.Repository))
        .Where(file => TextEndings.Contains(file.Extension.ToLowerInvariant()))
        .Select(file => Path.GetRelativePath(Shared.Repository, file.FullName).Replace('\\', '/'))
        .Order(StringComparer.Ordinal)];

    public static string Read(string path) => File.ReadAllText(Path.Combine(Shared.Repository, path));

    private static IEnumerable<FileInfo> Under(DirectoryInfo folder) =>
        folder.EnumerateFiles().Where(file => file.Name != ".git")
            .Concat(folder.EnumerateDirectories().Where(each => !NotOurs.Contains(each.Name)).SelectMany(Under));
}
