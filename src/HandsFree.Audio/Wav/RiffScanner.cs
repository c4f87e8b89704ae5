using System.Buffers.Binary;
using System.Text;

namespace HandsFree.Audio.Wav;

/// <summary>Walks the chunks of a RIFF/WAVE file and finds the format and the samples. NAudio's reader takes truncated and odd data in
/// silence, so the structure is checked here and only the decoding is left to it.
/// Source: Microsoft and IBM, Multimedia Programming Interface and Data Specifications 1.0 (1991), chapter 2 and "Waveform Audio File
/// Format"; Microsoft, mmreg.h, for WAVE_FORMAT_EXTENSIBLE.</summary>
internal static class RiffScanner
{
    /// <summary>What a program writes as a length that it does not know yet.</summary>
    private const uint Unknown = 0xFFFFFFFF;

    public static WavLayout Scan(Stream stream)
    {
        Span<byte> head = stackalloc byte[12];
        int got = ReadUpTo(stream, head);
        RequireRiff(head[..got]);
        uint riffLength = BinaryPrimitives.ReadUInt32LittleEndian(head[4..]);
        NAudio.Wave.WaveFormat? format = null;
        Span<byte> chunk = stackalloc byte[8];
        while ((got = ReadUpTo(stream, chunk)) == chunk.Length)
        {
            uint length = BinaryPrimitives.ReadUInt32LittleEndian(chunk[4..]);
            long start = stream.Position;
            if (chunk[..4].SequenceEqual("data"u8))
            {
                return format is null
                    ? throw new WavFormatException("the \"fmt \" chunk is missing before the samples")
                    : new WavLayout(format, start, DataLength(stream.Length - start, length, start, riffLength, format.BlockAlign));
            }

            if (start + length > stream.Length)
            {
                throw new WavFormatException($"truncated: the \"{Printable(chunk[..4])}\" chunk should have {length} bytes, the file has {stream.Length - start}");
            }

            if (chunk[..4].SequenceEqual("fmt "u8))
            {
                format = FormatChunk.Parse(stream, length);
            }

            stream.Position = start + length + (length & 1);
        }

        throw new WavFormatException(got > 0 || format is null ? "truncated inside the header" : "the \"data\" chunk is missing: there are no samples");
    }

    private static void RequireRiff(ReadOnlySpan<byte> head)
    {
        if (head.Length == 0)
        {
            throw new WavFormatException("the file is empty");
        }

        if (head.Length >= 4 && head[..4].SequenceEqual("RIFF"u8))
        {
            if (head.Length < 12)
            {
                throw new WavFormatException("truncated inside the header");
            }

            if (!head[8..12].SequenceEqual("WAVE"u8))
            {
                throw new WavFormatException($"not a WAV file: RIFF of the kind \"{Printable(head[8..12])}\"");
            }

            return;
        }

        throw new WavFormatException($"not a WAV file: begins with \"{Printable(head[..Math.Min(4, head.Length)])}\" instead of RIFF");
    }

    private static long DataLength(long available, uint stated, long start, uint riffLength, int frameBytes)
    {
        bool streamed = stated == Unknown || (stated == 0 && available > 0 && (riffLength == Unknown || 8L + riffLength <= start));
        if (streamed)
        {
            return available - (available % frameBytes);
        }

        if (stated > available)
        {
            throw new WavFormatException($"truncated: {stated} bytes of samples announced, {available} are there");
        }

        return stated % frameBytes == 0
            ? stated
            : throw new WavFormatException($"damaged: {stated} bytes of samples are no whole number of {frameBytes}-byte sample frames");
    }

    private static int ReadUpTo(Stream stream, Span<byte> buffer) => stream.ReadAtLeast(buffer, buffer.Length, throwOnEndOfStream: false);

    private static string Printable(ReadOnlySpan<byte> bytes)
    {
        StringBuilder text = new();
        foreach (byte b in bytes)
        {
            text.Append(b is >= 0x20 and < 0x7F ? (char)b : '.');
        }

        return text.ToString();
    }
}
