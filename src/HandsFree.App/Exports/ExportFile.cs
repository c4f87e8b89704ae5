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
    public static string? Write(string path, Action<Stream> content)
    {
        string draft = $"{Path.GetFullPath(path)}.new-{Environment.ProcessId}";
        FileStreamOptions options = new() { Mode = FileMode.Create, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        try
        {
            using (FileStream file = new(draft, options))
            {
                content(file);
                file.Flush(flushToDisk: true);
            }

            File.Move(draft, Path.GetFullPath(path), overwrite: false);
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            File.Delete(draft); // it holds personal data; where it is not there, nothing is done
            return $"{path}: can't be written ({e.Message.ReplaceLineEndings(" ")}); there is no such file now; see to the folder's space and rights, or name another";
        }
    }
}
