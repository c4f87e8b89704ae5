namespace HandsFree.App.Files;

/// <summary>Reads files that somebody named or put into the home, never more than a bound: a device that never ends and a file that
/// grows are refused like one that is too large.</summary>
internal static class BoundedFile
{
    /// <summary>Of a file that people write: a table, settings, rules.</summary>
    public const int MostBytes = 10_000_000;

    /// <summary>Of a FHIR bundle, which says more about each resident.</summary>
    public const int MostBytesOfBundle = 50_000_000;

    /// <summary>Its bytes, or one line that says what is wrong and what to do.</summary>
    /// <param name="path">The file.</param>
    /// <param name="most">What it may have at most, in bytes.</param>
    public static (byte[]? Content, string? Error) Read(string path, int most = MostBytes)
    {
        if (!File.Exists(path))
        {
            return (null, $"{path}: there is no such file; name one that is there");
        }

        try
        {
            using FileStream file = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            return Bounded(file, most) is { } content
                ? (content, null)
                : (null, $"{path}: larger than {most / 1_000_000} MB, which no such file is; cut it into parts, or name another");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return (null, $"{path}: can't be read ({e.Message.ReplaceLineEndings(" ")}); check the file and its rights");
        }
    }

    private static byte[]? Bounded(Stream stream, int most)
    {
        using MemoryStream content = new();
        byte[] block = new byte[64 * 1024];
        for (int read = stream.Read(block); read > 0; read = stream.Read(block))
        {
            if (content.Length + read > most)
            {
                return null;
            }

            content.Write(block, 0, read);
        }

        return content.ToArray();
    }
}
