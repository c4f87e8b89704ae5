using System.Buffers.Binary;

namespace HandsFree.Speech.Voice;

/// <summary>A WAV that was written to a pipe has made-up lengths in its head.</summary>
internal static class StreamedWav
{
    private const int HeadLength = 44;

    /// <summary>Writes the true lengths into a plain head of 44 bytes ("RIFF", "fmt " of 16 bytes, "data"); anything else is left
    /// to the reader to refuse.</summary>
    internal static byte[] Complete(byte[] wav)
    {
        if (wav.Length >= HeadLength && wav.AsSpan(0, 4).SequenceEqual("RIFF"u8) && wav.AsSpan(36, 4).SequenceEqual("data"u8))
        {
            BinaryPrimitives.WriteInt32LittleEndian(wav.AsSpan(4), wav.Length - 8);
            BinaryPrimitives.WriteInt32LittleEndian(wav.AsSpan(40), wav.Length - HeadLength);
        }

        return wav;
    }
}
