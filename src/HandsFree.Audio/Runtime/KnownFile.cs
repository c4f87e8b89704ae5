using System.Security.Cryptography;

namespace HandsFree.Audio.Runtime;

/// <summary>Checks a library or a model before it is loaded, wherever it came from: only the file that was read and tried is used.</summary>
public static class KnownFile
{
    /// <summary>Null where the file is the one that is known, else one line that says what is wrong.</summary>
    /// <param name="path">The file; there.</param>
    /// <param name="sha256">Of the files that are known, lower-case hexadecimal.</param>
    public static string? WhyNot(string path, params IReadOnlyCollection<string> sha256)
    {
        try
        {
            using FileStream file = new(path, FileMode.Open, FileAccess.Read, FileShare.Read);
            string found = Convert.ToHexStringLower(SHA256.HashData(file));
            return sha256.Contains(found) ? null : $"{path} is not the file that was checked (SHA-256 {found}), and is not used";
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return $"{path} can't be read ({e.Message.ReplaceLineEndings(" ")})";
        }
    }
}
