using System.Runtime.Versioning;
using System.Security.Cryptography;

namespace HandsFree.Store.Devices;

/// <summary>Small files that only this user may read: on Windows under the user's own protection (DPAPI), elsewhere with mode 600.</summary>
internal static class PrivateFile
{
    /// <summary>Writes it protected.</summary>
    public static void Write(string path, byte[] content) => Replace(path, OperatingSystem.IsWindows() ? Protect(content) : content);

    /// <summary>Writes a file complete under another name first, flushed, then gives it its own.</summary>
    public static void Replace(string path, byte[] content)
    {
        string draft = $"{path}.new-{Environment.ProcessId}-{Environment.CurrentManagedThreadId}";
        try
        {
            using (FileStream file = new(draft, Options(FileMode.Create)))
            {
                file.Write(content);
                file.Flush(flushToDisk: true);
            }

            File.Move(draft, path, overwrite: true);
        }
        catch
        {
            File.Delete(draft);
            throw;
        }
    }

    public static byte[] Read(string path)
    {
        byte[] content = File.ReadAllBytes(path);
        return OperatingSystem.IsWindows() ? Unprotect(content) : content;
    }

    /// <summary>Makes an empty file that only this user may read, where there is none: SQLite gives its own files the mode of the database.</summary>
    public static void Touch(string path)
    {
        using FileStream file = new(path, Options(FileMode.OpenOrCreate));
    }

    /// <summary>Makes a folder for this user alone, where it is not there.</summary>
    public static void MakeFolder(string folder)
    {
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(folder); // the user's own data folder is closed to others there
        }
        else
        {
            Directory.CreateDirectory(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    private static FileStreamOptions Options(FileMode mode)
    {
        FileStreamOptions options = new() { Mode = mode, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        return options;
    }

    [SupportedOSPlatform("windows")]
    private static byte[] Protect(byte[] content) => ProtectedData.Protect(content, null, DataProtectionScope.CurrentUser);

    [SupportedOSPlatform("windows")]
    private static byte[] Unprotect(byte[] content) => ProtectedData.Unprotect(content, null, DataProtectionScope.CurrentUser);
}
