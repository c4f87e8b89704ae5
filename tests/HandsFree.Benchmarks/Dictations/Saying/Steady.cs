using System.Security.Cryptography;
using System.Text;

namespace HandsFree.Benchmarks.Dictations.Saying;

/// <summary>Choices that are the same in every run and every process: they hang on what is chosen for, not on what came before.</summary>
internal static class Steady
{
    /// <summary>A number from 0 that hangs on the parts alone.</summary>
    public static int Number(params IEnumerable<object> parts)
    {
        string text = string.Join('\u001f', parts.Select(part => FormattableString.Invariant($"{part}")));
        return (int)(BitConverter.ToUInt32(SHA256.HashData(Encoding.UTF8.GetBytes(text))) >> 1);
    }

    /// <summary>One of several.</summary>
    public static T Of<T>(IReadOnlyList<T> several, params IEnumerable<object> parts) => several[Number(parts) % several.Count];
}
