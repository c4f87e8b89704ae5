namespace HandsFree.App.Pages;

/// <summary>Writes a page into a file that only this user may read.</summary>
internal static class PageFile
{
    /// <summary>What stands in the way, or null; asked before anybody unlocks anything.</summary>
    public static string? WhyNot(PageTarget target)
    {
        string? folder = Path.GetDirectoryName(target.File);
        return true switch
        {
            _ when Directory.Exists(target.File) => $"{target.File} is a folder; name a file in it",
            _ when !Directory.Exists(folder) => $"{target.File}: the folder {folder} is not there; make it, or name another",
            _ when File.Exists(target.File) && !target.Overwrite => $"{target.File} is there already; name another file, or replace it with --overwrite",
            _ => null,
        };
    }

    /// <summary>Writes the file whole, under another name first.</summary>
    /// <returns>Null, or what is wrong and what to do; then nothing was changed.</returns>
    public static string? Write(PageTarget target, byte[] content)
    {
        string draft = $"{target.File}.new-{Environment.ProcessId}";
        FileStreamOptions options = new() { Mode = FileMode.Create, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        try
        {
            using (FileStream file = new(draft, options))
            {
                file.Write(content);
                file.Flush(flushToDisk: true);
            }

            File.Move(draft, target.File, target.Overwrite);
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            Remove(draft);
            return $"{target.File}: can't be written ({e.Message.ReplaceLineEndings(" ")}); nothing was changed; see to the folder's space and rights, or name another";
        }
    }

    /// <summary>A draft holds personal data: it does not stay where it can be removed.</summary>
    private static void Remove(string draft)
    {
        if (File.Exists(draft))
        {
            File.Delete(draft);
        }
    }
}
