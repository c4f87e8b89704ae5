namespace HandsFree.App.Checks;

/// <summary>Whether the disk on which a folder lies is encrypted, as far as this system tells: on Linux, whether dm-crypt stands under the file
/// system. Another way of encrypting (a drive's own, a file system's) is not seen; elsewhere nothing is.</summary>
/// <param name="mounts">The content of /proc/self/mountinfo.</param>
/// <param name="blocks">The folder /sys/dev/block.</param>
internal sealed class DiskEncryption(string mounts, string blocks)
{
    private const string Encrypted = "CRYPT-";
    private const int DeviceField = 2;
    private const int PlaceField = 4;
    private const int Deepest = 8;

    /// <summary>That of this machine; null where the system does not tell.</summary>
    public static DiskEncryption? OfThisMachine()
    {
        try
        {
            return OperatingSystem.IsLinux() ? new DiskEncryption(File.ReadAllText("/proc/self/mountinfo"), "/sys/dev/block") : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>Whether it is; null where that can't be told.</summary>
    /// <param name="folder">A full path.</param>
    public bool? Of(string folder)
    {
        string? device = mounts.Split('\n').Select(line => line.Split(' ')).Where(fields => fields.Length > PlaceField && Holds(fields[PlaceField], folder))
            .OrderBy(fields => fields[PlaceField].Length).LastOrDefault()?[DeviceField];
        string block = Path.Combine(blocks, device ?? "none");
        return Directory.Exists(block) ? IsEncrypted(block, 0) : null;
    }

    private static bool Holds(string place, string folder) => place == "/" || folder == place || folder.StartsWith(place + "/", StringComparison.Ordinal);

    // A volume may lie on a volume: it is enough that one beneath is encrypted.
    private static bool IsEncrypted(string block, int depth)
    {
        string uuid = Path.Combine(block, "dm", "uuid");
        string slaves = Path.Combine(block, "slaves");
        return (File.Exists(uuid) && File.ReadAllText(uuid).StartsWith(Encrypted, StringComparison.Ordinal))
            || (depth < Deepest && Directory.Exists(slaves) && Directory.GetFileSystemEntries(slaves) is { Length: > 0 } under && under.All(one => IsEncrypted(one, depth + 1)));
    }
}
