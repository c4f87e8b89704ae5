using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace HandsFree.Benchmarks.Noise;

/// <summary>A seed for one recording and one purpose, the same on every machine, whatever else is heard and in whatever order.</summary>
internal static class ClipSeed
{
    /// <summary>The seed, not negative.</summary>
    /// <param name="seed">Of the run.</param>
    /// <param name="purpose">"noise", "room".</param>
    /// <param name="key">The recording's folder and file name.</param>
    public static int Of(int seed, string purpose, string key) =>
        BinaryPrimitives.ReadInt32LittleEndian(SHA256.HashData(Encoding.UTF8.GetBytes($"{seed}\n{purpose}\n{key}"))) & int.MaxValue;
}
