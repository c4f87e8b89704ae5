using System.Diagnostics.CodeAnalysis;
using System.Security.Cryptography;

namespace HandsFree.Store.Keys;

/// <summary>The supervisor's key on paper: 128 random bits and 32 of checksum, as eight groups of four signs that can't be mistaken for
/// each other (Crockford's base 32: no I, L, O, U; written by hand, O is read as 0 and I and L as 1).</summary>
public sealed class RecoveryKey
{
    private const string Signs = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    private const int KeySize = 16;
    private const int CheckSize = 4;
    private const int SignCount = (KeySize + CheckSize) * 8 / 5;
    private const int Group = 4;

    private readonly byte[] _key;

    private RecoveryKey(byte[] key) => _key = key;

    internal ReadOnlySpan<byte> Bytes => _key;

    /// <summary>A new one.</summary>
    public static RecoveryKey New() => new(RandomNumberGenerator.GetBytes(KeySize));

    /// <summary>The key as it stands on paper; small letters, blanks and dashes don't matter.</summary>
    public static bool TryParse(string text, [NotNullWhen(true)] out RecoveryKey? key, [NotNullWhen(false)] out string? error)
    {
        ArgumentNullException.ThrowIfNull(text);
        key = null;
        string signs = string.Concat(text.ToUpperInvariant().Where(c => c is not ('-' or ' ' or '\r' or '\n' or '\t')))
            .Replace('O', '0').Replace('I', '1').Replace('L', '1');
        if (signs.Length != SignCount || signs.Any(c => !Signs.Contains(c, StringComparison.Ordinal)))
        {
            error = $"a recovery key has {SignCount} letters and digits in groups of {Group}; copy it from the paper again";
            return false;
        }

        byte[] all = Unpacked(signs);
        byte[] bytes = all[..KeySize];
        if (!all.AsSpan(KeySize).SequenceEqual(Check(bytes)))
        {
            error = "the recovery key does not check: a sign of it is wrong; compare it with the paper";
            return false;
        }

        key = new RecoveryKey(bytes);
        error = null;
        return true;
    }

    /// <summary>The key for the paper.</summary>
    public string ForPaper()
    {
        string signs = Packed([.. _key, .. Check(_key)]);
        return string.Join('-', signs.Chunk(Group).Select(group => new string(group)));
    }

    /// <summary>Nothing of the key.</summary>
    public override string ToString() => "recovery key";

    private static byte[] Check(byte[] key) => SHA256.HashData([.. "handsfree recovery key"u8, .. key])[..CheckSize];

    private static string Packed(byte[] bytes)
    {
        uint kept = 0;
        var signs = new char[bytes.Length * 8 / 5];
        int bits = 0, at = 0;
        foreach (byte each in bytes)
        {
            kept = (kept << 8) | each;
            bits += 8;
            while (bits >= 5)
            {
                bits -= 5;
                signs[at++] = Signs[(int)((kept >> bits) & 31)];
            }
        }

        return new string(signs);
    }

    private static byte[] Unpacked(string signs)
    {
        uint kept = 0;
        var bytes = new byte[signs.Length * 5 / 8];
        int bits = 0, at = 0;
        foreach (char each in signs)
        {
            kept = (kept << 5) | (uint)Signs.IndexOf(each, StringComparison.Ordinal);
            bits += 5;
            if (bits >= 8)
            {
                bits -= 8;
                bytes[at++] = (byte)(kept >> bits);
            }
        }

        return bytes;
    }
}
