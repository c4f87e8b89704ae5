using System.Runtime.CompilerServices;
using System.Text;
using Xunit;

namespace HandsFree.TestKit;

/// <summary>Holds a text that people see against a file beside the test; fails when the file is missing.
/// UPDATE_GOLDEN=1 writes the files anew.</summary>
public static class Golden
{
    /// <summary>Whether the files are to be written anew. Refused where CI=true: a check that writes what it checks is none.</summary>
    public static bool Updates
    {
        get
        {
            bool updates = Environment.GetEnvironmentVariable("UPDATE_GOLDEN") == "1";
            Assert.False(updates && Environment.GetEnvironmentVariable("CI") == "true", "UPDATE_GOLDEN is refused where CI=true; unset one of them");
            return updates;
        }
    }

    public static void Match(string actual, string name = "", [CallerFilePath] string file = "", [CallerMemberName] string member = "")
    {
        string folder = Path.Combine(Path.GetDirectoryName(file)!, "Golden");
        string stem = Path.GetFileNameWithoutExtension(file) + "." + member + (name.Length == 0 ? "" : "." + name);
        string path = Path.Combine(folder, stem + ".txt");
        string text = actual.ReplaceLineEndings("\n").TrimEnd('\n') + "\n";
        if (Updates)
        {
            Directory.CreateDirectory(folder);
            File.WriteAllText(path, text, new UTF8Encoding(false));
            return;
        }

        Assert.True(File.Exists(path), $"missing {path}; look at the text and run once with UPDATE_GOLDEN=1");
        Assert.Equal(File.ReadAllText(path).ReplaceLineEndings("\n"), text);
    }
}
