using Xunit;

namespace HandsFree.TestKit;

/// <summary>Folders that a machine may or may not have; a test that needs one is skipped with the reason.</summary>
public static class Shared
{
    /// <summary>The folder of HANDSFREE_MODELS joined with a name; skips the test where it is missing.</summary>
    public static string Model(string name) => Need("HANDSFREE_MODELS", name);

    /// <summary>The folder of HANDSFREE_AUDIO joined with a name; skips the test where it is missing.</summary>
    public static string Audio(string name) => Need("HANDSFREE_AUDIO", name);

    /// <summary>The top folder of the repository, found from the test's own folder upwards.</summary>
    public static string Repository { get; } = FindRepository();

    private static string Need(string variable, string name)
    {
        string? folder = Environment.GetEnvironmentVariable(variable);
        Assert.SkipWhen(string.IsNullOrEmpty(folder), $"{variable} is not set, {name} is needed");
        string path = Path.Combine(folder!, name);
        Assert.SkipUnless(Path.Exists(path), $"{name} is not in the folder that {variable} names");
        return path;
    }

    private static string FindRepository()
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            if (File.Exists(Path.Combine(at.FullName, "HandsFree.sln")))
            {
                return at.FullName;
            }
        }

        throw new DirectoryNotFoundException("HandsFree.sln is in no folder above the test's");
    }
}
