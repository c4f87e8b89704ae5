using System.Security.Cryptography;
using HandsFree.Store.Devices;
using HandsFree.Store.Journaling;
using HandsFree.Store.Sealing;

namespace HandsFree.Store.Recordings;

/// <summary>Recordings beside a journal, one file each, sealed under the journal's key. The file is named by 32 hex digits of chance and
/// ".hfa"; <see cref="SealedFile"/> "HFA2": the number is when the recording is to be deleted (seconds since 1970, UTC), in the clear so that
/// it can be deleted without the key; the place is the file's name. Nothing else of it can be read without the key.</summary>
public sealed class RecordingShelf
{
    private const string Ending = ".hfa";
    private const int NameSize = 16;
    private static readonly SealedFile Form = new([.. "HFA2"u8], [.. "handsfree recording 2"u8]);
    private readonly JournalUnlocked _unlocked;
    private readonly string _folder;

    internal RecordingShelf(JournalUnlocked unlocked, string folder)
    {
        _unlocked = unlocked;
        _folder = folder;
    }

    /// <summary>The recordings that are there, by name, and until when they may be; null for a file that is not whole.</summary>
    /// <exception cref="IOException">The folder can't be read.</exception>
    public IReadOnlyList<(string Name, DateTimeOffset? Until)> All() => Directory.Exists(_folder)
        ? [.. Directory.EnumerateFiles(_folder, $"*{Ending}").Order(StringComparer.Ordinal).Select(file => (Path.GetFileNameWithoutExtension(file), Until(file)))]
        : [];

    /// <summary>Keeps a recording, flushed to the disk.</summary>
    /// <param name="content">Its bytes.</param>
    /// <param name="until">From when on it is to be deleted; whole seconds.</param>
    /// <returns>Its name.</returns>
    /// <exception cref="IOException">It can't be written; nothing of it is there.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written.</exception>
    public string Keep(ReadOnlySpan<byte> content, DateTimeOffset until)
    {
        string name = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(NameSize));
        PrivateFile.Replace(FileOf(name), Form.Seal(_unlocked, until.ToUnixTimeSeconds(), Place(name), content));
        return name;
    }

    /// <summary>A recording's bytes; null where it is not there, not whole, or not of this journal.</summary>
    /// <param name="name">32 hex digits.</param>
    public byte[]? Open(string name) =>
        IsName(name) && File.Exists(FileOf(name)) ? Form.Open(_unlocked, File.ReadAllBytes(FileOf(name)), Place(name)) : null;

    /// <summary>Deletes a recording; nothing where it is not there.</summary>
    /// <exception cref="IOException">It can't be deleted.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be deleted.</exception>
    public void Delete(string name)
    {
        if (IsName(name))
        {
            File.Delete(FileOf(name));
        }
    }

    /// <summary>Whether a text is a recording's name; nothing else ever becomes part of a path.</summary>
    private static bool IsName(string name) => name.Length == 2 * NameSize && name.All(char.IsAsciiHexDigitLower);

    private static byte[] Place(string name) => Convert.FromHexString(name);

    private static DateTimeOffset? Until(string file)
    {
        Span<byte> beginning = stackalloc byte[SealedFile.Shortest];
        using FileStream stream = new(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        int read = stream.ReadAtLeast(beginning, beginning.Length, throwOnEndOfStream: false);
        return Form.Number(beginning[..read]) is { } seconds && seconds is >= 0 and < 253_402_300_800 ? DateTimeOffset.FromUnixTimeSeconds(seconds) : null;
    }

    private string FileOf(string name) => Path.Combine(_folder, name + Ending);
}
