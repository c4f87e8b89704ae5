namespace HandsFree.App.Exports;

/// <summary>A file that leaves the program: only this user may read it, and it is there whole or not at all.</summary>
internal static class ExportFile
{
    /// <summary>What stands in the way, or null; asked before anything is written down.</summary>
    public static string? WhyNot(string path)
    {
        string full = Path.GetFullPath(path);
        return true switch
        {
            _ when path.Length == 0 => "--out is empty; name a file",
            _ when Directory.Exists(full) => $"{path} is a folder; name a file in it",
            _ when File.Exists(full) => $"{path} is there already; name a new file",
            _ when !Directory.Exists(Path.GetDirectoryName(full)) => $"{path}: the folder {Path.GetDirectoryName(full)} is not there; make it, or name another",
            _ => null,
        };
    }

    /// <summary>Writes the file under another name, flushed, and then gives it its own.</summary>
    /// <returns>Null, or what is wrong and what to do; then there is no file.</returns>
    public static string? Write(string path, Action<Stream> content) => WriteAll([content], _ => path);

    /// <summary>Writes several files under other names, flushed, and gives them their own once all are written.</summary>
    /// <param name="contents">What is in each.</param>
    /// <param name="names">The path of the file of an index, once it is known how many there are.</param>
    /// <returns>Null, or what is wrong and what to do; then there is none of them.</returns>
    public static string? WriteAll(IEnumerable<Action<Stream>> contents, Func<(int Index, int Count), string> names)
    {
        List<string> drafts = [];
        List<string> done = [];
        try
        {
            foreach (Action<Stream> content in contents)
            {
                string draft = $"{Path.GetFullPath(names((drafts.Count, 1)))}.new-{Environment.ProcessId}{(drafts.Count == 0 ? "" : $"-{drafts.Count}")}";
                drafts.Add(draft);
                using FileStream file = new(draft, Options());
                content(file);
                file.Flush(flushToDisk: true);
            }

            for (int i = 0; i < drafts.Count; i++)
            {
                string path = Path.GetFullPath(names((i, drafts.Count)));
                File.Move(drafts[i], path, overwrite: false);
                done.Add(path);
            }

            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // They hold personal data; where one is not there, nothing is done.
            drafts.Concat(done).ToList().ForEach(File.Delete);
            return $"{names((0, 1))}: can't be written ({e.Message.ReplaceLineEndings(" ")}); there is no such file now; see to the folder's space and rights, or name another";
        }
    }

    private static FileStreamOptions Options()
    {
        FileStreamOptions options = new() { Mode = FileMode.Create, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        return options;
    }
}
