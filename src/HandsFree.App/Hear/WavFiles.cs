namespace HandsFree.App.Hear;

/// <summary>The recordings that were named: a file stands for itself, a folder for all its .wav files by their names.</summary>
internal static class WavFiles
{
    /// <summary>Paths in the order in which they were named, or with an error where a folder can't be read or has none.</summary>
    public static IEnumerable<(string Path, string? Error)> Of(IEnumerable<string> named) => named.SelectMany(Of);

    private static IEnumerable<(string, string?)> Of(string named)
    {
        if (!Directory.Exists(named))
        {
            return [(named, null)];
        }

        try
        {
            string[] files = Directory.GetFiles(named, "*.wav", new EnumerationOptions { MatchCasing = MatchCasing.CaseInsensitive });
            Array.Sort(files, StringComparer.Ordinal);
            return files.Length > 0 ? files.Select(file => (file, (string?)null)) : [(named, $"{named}: there is no .wav file in this folder; name another")];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return [(named, $"{named}: can't be read ({e.Message.ReplaceLineEndings(" ")}); check the folder's rights")];
        }
    }
}
