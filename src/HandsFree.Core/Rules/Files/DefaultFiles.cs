namespace HandsFree.Core.Rules.Files;

/// <summary>The rule files that are embedded in the program.</summary>
internal static class DefaultFiles
{
    private const string Folder = "Rules.Data.";

    public static IReadOnlyList<RuleFile> Read()
    {
        var assembly = typeof(DefaultFiles).Assembly;
        var files = new List<RuleFile>();
        foreach (string name in assembly.GetManifestResourceNames().Where(n => n.Contains(Folder, StringComparison.Ordinal)).Order(StringComparer.Ordinal))
        {
            using var reader = new StreamReader(assembly.GetManifestResourceStream(name)!);
            int start = name.IndexOf(Folder, StringComparison.Ordinal) + Folder.Length;
            files.Add(new(name[start..], reader.ReadToEnd()));
        }

        return files;
    }
}
