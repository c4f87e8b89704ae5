namespace HandsFree.App.Files;

/// <summary>What is said where a file can't be written.</summary>
internal static class WriteFault
{
    // Windows' own numbers (winerror.h): ERROR_SHARING_VIOLATION, ERROR_LOCK_VIOLATION.
    private const int SharingViolation = unchecked((int)0x80070020);
    private const int LockViolation = unchecked((int)0x80070021);

    /// <summary>One line that says what is wrong and what to do.</summary>
    /// <param name="path">The file.</param>
    /// <param name="wrong">What the system answered.</param>
    public static string Of(string path, Exception wrong) => Of(path, wrong, OperatingSystem.IsWindows());

    /// <summary>The same for a system. Windows refuses to replace a file that another program shows: as a sharing violation, or, when the
    /// finished draft takes the name, as a missing right.</summary>
    public static string Of(string path, Exception wrong, bool onWindows) => wrong switch
    {
        IOException { HResult: SharingViolation or LockViolation } => IsOpen(path),
        UnauthorizedAccessException when onWindows && File.Exists(path) => IsOpen(path),
        _ => $"{path}: can't be written ({wrong.Message.ReplaceLineEndings(" ")}); nothing was changed; see to the folder's space and rights, or name another",
    };

    private static string IsOpen(string path) =>
        $"{path}: is open in another program; close it there and try again, or name another file; nothing was changed";
}
