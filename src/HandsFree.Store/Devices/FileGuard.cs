namespace HandsFree.Store.Devices;

/// <summary>One process at a time: an open file that no other may open.</summary>
internal static class FileGuard
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(10);

    /// <summary>Takes the guard, waiting for who has it; disposing of it gives it back.</summary>
    /// <exception cref="IOException">Another process has kept it for ten seconds.</exception>
    public static FileStream Take(string path, TimeProvider time)
    {
        long begun = time.GetTimestamp();
        using ManualResetEventSlim pause = new();
        while (true)
        {
            try
            {
                return new FileStream(path, Options());
            }
            catch (IOException) when (time.GetElapsedTime(begun) < Longest && File.Exists(path))
            {
                pause.Wait(TimeSpan.FromMilliseconds(5));
            }
        }
    }

    private static FileStreamOptions Options()
    {
        FileStreamOptions options = new() { Mode = FileMode.OpenOrCreate, Access = FileAccess.ReadWrite, Share = FileShare.None };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        return options;
    }
}
