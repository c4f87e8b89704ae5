using System.Security.Cryptography;

namespace HandsFree.Store.Keys;

/// <summary>A data key of a journal: 32 random bytes, on the disk only wrapped. Disposing of it wipes it from memory.</summary>
internal sealed class DataKey : IDisposable
{
    public const int Size = 32;

    private readonly byte[] _bytes;

    public DataKey(ReadOnlySpan<byte> bytes) => _bytes = bytes.ToArray();

    public ReadOnlySpan<byte> Bytes => _bytes;

    public static DataKey New() => new(RandomNumberGenerator.GetBytes(Size));

    public void Dispose() => CryptographicOperations.ZeroMemory(_bytes);
}
