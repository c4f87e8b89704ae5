using System.Globalization;
using System.Text.RegularExpressions;

namespace HandsFree.Benchmarks.Journals;

/// <summary>One call of a traced process that changes a file of the journal, flushes it, or announces a number.</summary>
/// <param name="Kind">What.</param>
/// <param name="File">The file's name in the folder, or empty.</param>
/// <param name="Offset">Where, or the new length.</param>
/// <param name="Bytes">What was written.</param>
internal sealed partial record FileWrite(FileWriteKind Kind, string File, long Offset, byte[] Bytes)
{
    /// <summary>The calls of a log of "strace -f -y -xx", in their order.</summary>
    public static IEnumerable<FileWrite> Of(IEnumerable<string> log, string folder)
    {
        Dictionary<string, long> positions = [];
        foreach (string line in log)
        {
            Match call = Call().Match(line);
            if (!call.Success)
            {
                continue;
            }

            string path = Text(call.Groups["path"].Value);
            byte[] bytes = call.Groups["data"].Success ? Bytes16(call.Groups["data"].Value) : [];
            long number = call.Groups["number"].Success ? long.Parse(call.Groups["number"].Value, CultureInfo.InvariantCulture) : 0;
            string name = call.Groups["name"].Value;
            // The runtime writes stdout through a copy of its descriptor.
            if (name == "write" && path.StartsWith("pipe:", StringComparison.Ordinal) && bytes is [.., (byte)'\n'] && bytes[..^1].All(b => char.IsAsciiDigit((char)b)))
            {
                yield return new FileWrite(FileWriteKind.Announced, "", 0, bytes);
            }

            bool isPlace = path.Contains("/places/", StringComparison.Ordinal);
            if (!path.StartsWith(folder, StringComparison.Ordinal) || (!isPlace && !path.Contains("journal.db", StringComparison.Ordinal)))
            {
                continue;
            }

            // The draft of a new journal becomes the journal: it is the same file.
            string file = isPlace ? System.IO.Path.GetRelativePath(folder, path) : path.EndsWith("-wal", StringComparison.Ordinal) ? "journal.db-wal" : path.EndsWith("-shm", StringComparison.Ordinal) ? "" : "journal.db";
            switch (name)
            {
                case "lseek":
                    positions[path] = number;
                    break;
                case "write" when file.Length > 0:
                    yield return new FileWrite(FileWriteKind.Written, file, positions.GetValueOrDefault(path), bytes);
                    positions[path] = positions.GetValueOrDefault(path) + bytes.Length;
                    break;
                case "pwrite64" when file.Length > 0:
                    yield return new FileWrite(FileWriteKind.Written, file, number, bytes);
                    break;
                case "ftruncate" when file.Length > 0:
                    yield return new FileWrite(FileWriteKind.Cut, file, number, []);
                    break;
                case "fsync" or "fdatasync" when file.Length > 0:
                    yield return new FileWrite(FileWriteKind.Flushed, file, 0, []);
                    break;
            }
        }
    }

    private static byte[] Bytes16(string escaped) => Convert.FromHexString(escaped.Replace("\\x", "", StringComparison.Ordinal));

    private static string Text(string escaped) =>
        escaped.StartsWith("\\x", StringComparison.Ordinal) ? System.Text.Encoding.UTF8.GetString(Bytes16(escaped)) : escaped;

    [GeneratedRegex("""(?<name>pwrite64|write|lseek|ftruncate|fsync|fdatasync)\(\d+<(?<path>[^>]*)>(, "(?<data>[^"]*)", \d+)?(, (?<number>\d+))?""")]
    private static partial Regex Call();
}
