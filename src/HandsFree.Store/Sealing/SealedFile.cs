using System.Buffers.Binary;
using HandsFree.Store.Journaling;
using HandsFree.Store.Keys;

namespace HandsFree.Store.Sealing;

/// <summary>A file beside the journal that only its key opens: four letters, a number (8, big-endian), the data key's generation (4), then
/// the content as <see cref="OnceSealed"/>. Letters, journal, number, generation and what ties the file to its place are
/// authenticated.</summary>
/// <param name="letters">What kind of file: four letters.</param>
/// <param name="purpose">The purpose of its key, for HKDF.</param>
internal sealed class SealedFile(byte[] letters, byte[] purpose)
{
    /// <summary>The bytes of a file with nothing in it; enough for <see cref="Number"/>.</summary>
    public const int Shortest = BodyAt + OnceSealed.SaltSize + OnceSealed.TagSize;

    private const int NumberAt = 4;
    private const int GenerationAt = NumberAt + sizeof(long);
    private const int BodyAt = GenerationAt + sizeof(int);

    /// <summary>The number in a file's clear beginning; null where it is no such file.</summary>
    public long? Number(ReadOnlySpan<byte> file) =>
        file.Length >= Shortest && file.StartsWith(letters) ? BinaryPrimitives.ReadInt64BigEndian(file[NumberAt..]) : null;

    /// <summary>The file's bytes.</summary>
    /// <param name="unlocked">The journal.</param>
    /// <param name="number">Stands in the clear.</param>
    /// <param name="place">Ties the file to where it belongs.</param>
    /// <param name="content">What is sealed.</param>
    public byte[] Seal(JournalUnlocked unlocked, long number, ReadOnlySpan<byte> place, ReadOnlySpan<byte> content)
    {
        DataKeys keys = unlocked.Keys.Data;
        byte[] start = new byte[BodyAt];
        letters.CopyTo(start, 0);
        BinaryPrimitives.WriteInt64BigEndian(start.AsSpan(NumberAt), number);
        BinaryPrimitives.WriteInt32BigEndian(start.AsSpan(GenerationAt), keys.Generation);
        return [.. start, .. OnceSealed.Seal(keys.Current, Purpose(unlocked), Associated(unlocked, start, place), content)];
    }

    /// <summary>The content; null where the file is not as it was sealed, or not where it was.</summary>
    public byte[]? Open(JournalUnlocked unlocked, ReadOnlySpan<byte> file, ReadOnlySpan<byte> place) =>
        Number(file) is not null && unlocked.Keys.Data.Of(BinaryPrimitives.ReadInt32BigEndian(file[GenerationAt..])) is { } key
            ? OnceSealed.Open(key, Purpose(unlocked), Associated(unlocked, file, place), file[BodyAt..])
            : null;

    private byte[] Purpose(JournalUnlocked unlocked) => [.. purpose, .. unlocked.Id];

    private static byte[] Associated(JournalUnlocked unlocked, ReadOnlySpan<byte> file, ReadOnlySpan<byte> place) =>
        [.. file[..NumberAt], .. unlocked.Id, .. file[NumberAt..BodyAt], .. place];
}
