namespace HandsFree.App.Homes;

/// <summary>Reads a file that somebody named.</summary>
internal static class WholeFile
{
    /// <summary>Its bytes, or one line that says what is wrong and what to do.</summary>
    public static (byte[]? Content, string? Error) Read(string path)
    {
        if (!File.Exists(path))
        {
            return (null, $"{path}: there is no such file; name one that is there");
        }

        try
        {
            return (File.ReadAllBytes(path), null);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return (null, $"{path}: can't be read ({e.Message.ReplaceLineEndings(" ")}); check the file and its rights");
        }
    }
}
