using System.Diagnostics;

namespace HandsFree.App.Files;

/// <summary>Writes files that are there whole or not at all: a draft beside the file, for this user alone, flushed to the disk, takes
/// the file's name in one step. A draft may hold personal data: one whose program was killed is removed before the next is written.</summary>
internal static class AtomicFile
{
    private const string Mark = ".draft-";

    /// <summary>Writes a file.</summary>
    /// <param name="path">The file; its folder is there.</param>
    /// <param name="content">All of it.</param>
    /// <param name="overwrite">Whether a file of that name is replaced; where not, one that is there is an error.</param>
    /// <returns>Null, or one line that says what is wrong and what to do; then nothing was changed and no draft is left.</returns>
    public static string? Write(string path, ReadOnlySpan<byte> content, bool overwrite = true)
    {
        string draft = $"{path}{Mark}{Environment.ProcessId}-{Environment.CurrentManagedThreadId}";
        try
        {
            RemoveLeft(path);
            using (FileStream file = new(draft, ForThisUser()))
            {
                file.Write(content);
                file.Flush(flushToDisk: true);
            }

            File.Move(draft, path, overwrite);
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            string wrong = WriteFault.Of(path, e);
            return Remove(draft) is { } stays ? $"{wrong}; {stays}" : wrong;
        }
    }

    /// <summary>Options of a new file that only this user may read; on Windows the user's own folder is closed to others.</summary>
    private static FileStreamOptions ForThisUser()
    {
        FileStreamOptions options = new() { Mode = FileMode.Create, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        return options;
    }

    private static void RemoveLeft(string path)
    {
        string full = Path.GetFullPath(path);
        string begin = Path.GetFileName(full) + Mark;
        foreach (string draft in Directory.EnumerateFiles(Path.GetDirectoryName(full)!).Where(f => Path.GetFileName(f).StartsWith(begin, StringComparison.Ordinal)))
        {
            if (int.TryParse(Path.GetFileName(draft)[begin.Length..].Split('-')[0], out int writer) && !IsRunning(writer))
            {
                File.Delete(draft);
            }
        }
    }

    private static bool IsRunning(int process)
    {
        try
        {
            using Process found = Process.GetProcessById(process);
            return true;
        }
        catch (ArgumentException)
        {
            return false; // no process of that number
        }
    }

    private static string? Remove(string draft)
    {
        try
        {
            File.Delete(draft);
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return $"a draft stays as {draft} ({e.Message.ReplaceLineEndings(" ")}); delete it, it may hold personal data";
        }
    }
}
