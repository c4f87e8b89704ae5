using NAudio.Wave;

namespace HandsFree.Audio.Wav;

/// <summary>Reads and checks a "fmt " chunk.</summary>
internal static class FormatChunk
{
    private const int LowestRate = 8_000;
    private const int HighestRate = 48_000;
    private const int LongestChunk = 4_096;

    public static WaveFormat Parse(Stream stream, uint length)
    {
        if (length is < 16 or > LongestChunk)
        {
            throw new WavFormatException($"damaged: a \"fmt \" chunk of {length} bytes");
        }

        byte[] bytes = new byte[length];
        stream.ReadExactly(bytes);
        WaveFormat format = Resolve(bytes);
        if (format.Channels is < 1 or > 2)
        {
            throw new WavFormatException($"{format.Channels} channels; mono or stereo is needed");
        }

        if (format.SampleRate is < LowestRate or > HighestRate)
        {
            throw new WavFormatException($"sample rate {format.SampleRate} Hz; {LowestRate} to {HighestRate} Hz is needed");
        }

        RequireCoding(format);
        return format.BlockAlign == format.Channels * format.BitsPerSample / 8
            ? format
            : throw new WavFormatException(
                $"damaged: sample frames of {format.BlockAlign} bytes for {format.Channels} × {format.BitsPerSample} bits");
    }

    private static WaveFormat Resolve(byte[] bytes)
    {
        using BinaryReader reader = new(new MemoryStream(bytes));
        WaveFormat format = WaveFormat.FromFormatChunk(reader, bytes.Length);
        if (format.Encoding != WaveFormatEncoding.Extensible)
        {
            return format;
        }

        if (bytes.Length < 40)
        {
            throw new WavFormatException($"damaged: an extensible \"fmt \" chunk of {bytes.Length} bytes");
        }

        // The coding is the first two bytes of the sub-format's GUID, the rest of which is fixed.
        WaveFormatEncoding coding = (WaveFormatEncoding)BitConverter.ToUInt16(bytes, 24);
        return WaveFormat.CreateCustomFormat(
            coding, format.SampleRate, format.Channels, format.AverageBytesPerSecond, format.BlockAlign, format.BitsPerSample);
    }

    private static void RequireCoding(WaveFormat format)
    {
        bool known = format.Encoding switch
        {
            WaveFormatEncoding.Pcm => format.BitsPerSample is 8 or 16 or 24 or 32,
            WaveFormatEncoding.IeeeFloat => format.BitsPerSample is 32 or 64,
            _ => false,
        };
        if (!known)
        {
            throw new WavFormatException(
                $"coding {Name(format.Encoding)}, {format.BitsPerSample} bits; PCM of 8, 16, 24 or 32 bits or float of 32 or 64 bits is needed");
        }
    }

    private static string Name(WaveFormatEncoding encoding) => encoding switch
    {
        WaveFormatEncoding.Pcm => "PCM",
        WaveFormatEncoding.IeeeFloat => "float",
        WaveFormatEncoding.ALaw => "A-law",
        WaveFormatEncoding.MuLaw => "mu-law",
        WaveFormatEncoding.Adpcm => "ADPCM",
        WaveFormatEncoding.Gsm610 => "GSM 6.10",
        WaveFormatEncoding.MpegLayer3 => "MP3",
        _ => $"0x{(ushort)encoding:X4}",
    };
}
