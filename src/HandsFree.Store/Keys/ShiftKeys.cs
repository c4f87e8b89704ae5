using HandsFree.Store.Devices;
using HandsFree.Store.Journaling;
using HandsFree.Store.Sealing;

namespace HandsFree.Store.Keys;

/// <summary>A key for each shift, in a sealed file of its own beside the journal (<see cref="SealedFile"/> "HFS1": the number is the Unix
/// time from which on it is destroyed). What a round was told is sealed under it before it goes into the journal: once the file is gone
/// nobody can read it, and nothing of the journal had to be deleted or changed. No backup of the journal has these keys.</summary>
/// <remarks>The file is overwritten before it is deleted. A disk that writes elsewhere than it is told (flash, a copying file system) may
/// keep the old bytes; they are sealed under the journal's key.</remarks>
public sealed class ShiftKeys
{
    private const string Ending = ".hfs";
    private static readonly SealedFile Form = new([.. "HFS1"u8], [.. "handsfree shift key 1"u8]);
    private readonly Dictionary<string, DataKey> _known = new(StringComparer.Ordinal);
    private readonly JournalUnlocked _unlocked;
    private readonly string _folder;

    internal ShiftKeys(JournalUnlocked unlocked, string folder) => (_unlocked, _folder) = (unlocked, folder);

    /// <summary>Seals bytes under a shift's key, which is made where there is none.</summary>
    /// <param name="shift">Names the shift: letters, digits and hyphens.</param>
    /// <param name="until">When a key that is made now is to be destroyed.</param>
    /// <param name="place">What ties the bytes to their place; not secret.</param>
    /// <param name="content">The bytes.</param>
    /// <exception cref="IOException">The key can't be kept.</exception>
    public byte[] Seal(string shift, DateTimeOffset until, ReadOnlySpan<byte> place, ReadOnlySpan<byte> content) =>
        OnceSealed.Seal(Key(shift) ?? Make(shift, until), Purpose(shift), place, content);

    /// <summary>The bytes; null where the shift's key is destroyed, or the bytes are not as they were sealed.</summary>
    public byte[]? Open(string shift, ReadOnlySpan<byte> place, ReadOnlySpan<byte> content) =>
        Key(shift) is { } key ? OnceSealed.Open(key, Purpose(shift), place, content) : null;

    /// <summary>Destroys the keys whose time is over.</summary>
    /// <returns>How many.</returns>
    /// <exception cref="IOException">One can't be destroyed.</exception>
    public int DestroyOverdue(DateTimeOffset now)
    {
        int destroyed = 0;
        foreach (string file in Directory.Exists(_folder) ? Directory.GetFiles(_folder, $"*{Ending}") : [])
        {
            byte[] bytes = File.ReadAllBytes(file);
            if (Form.Number(bytes) is not { } until || until <= now.ToUnixTimeSeconds())
            {
                using (FileStream stream = new(file, FileMode.Open, FileAccess.Write, FileShare.None))
                {
                    stream.Write(new byte[bytes.Length]);
                    stream.Flush(flushToDisk: true);
                }

                File.Delete(file);
                _known.Remove(Path.GetFileNameWithoutExtension(file));
                destroyed++;
            }
        }

        return destroyed;
    }

    private DataKey? Key(string shift)
    {
        if (_known.TryGetValue(shift, out DataKey? known))
        {
            return known;
        }

        return IsName(shift) && File.Exists(FileOf(shift)) && Form.Open(_unlocked, File.ReadAllBytes(FileOf(shift)), Place(shift)) is { } key
            ? _known[shift] = new DataKey(key)
            : null;
    }

    private DataKey Make(string shift, DateTimeOffset until)
    {
        if (!IsName(shift))
        {
            throw new ArgumentException($"\"{shift}\" names no shift", nameof(shift));
        }

        DataKey key = DataKey.New();
        Directory.CreateDirectory(_folder);
        PrivateFile.Replace(FileOf(shift), Form.Seal(_unlocked, until.ToUnixTimeSeconds(), Place(shift), key.Bytes));
        return _known[shift] = key;
    }

    private string FileOf(string shift) => Path.Combine(_folder, shift + Ending);

    private static bool IsName(string shift) => shift.Length is > 0 and < 64 && shift.All(c => char.IsAsciiLetterOrDigit(c) || c == '-');

    private static byte[] Place(string shift) => System.Text.Encoding.ASCII.GetBytes(shift);

    private static byte[] Purpose(string shift) => [.. "handsfree told 1"u8, .. Place(shift)];
}
