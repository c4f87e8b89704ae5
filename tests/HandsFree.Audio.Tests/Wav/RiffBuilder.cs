using System.Text;

namespace HandsFree.Audio.Tests.Wav;

/// <summary>Writes RIFF/WAVE bytes, right or wrong as a test wants them.</summary>
internal sealed class RiffBuilder
{
    private readonly MemoryStream _body = new();

    public static RiffBuilder Pcm(int rate, int channels, int bits) => new RiffBuilder().Format(1, rate, channels, bits);

    public static RiffBuilder Float(int rate, int channels, int bits) => new RiffBuilder().Format(3, rate, channels, bits);

    public RiffBuilder Format(ushort coding, int rate, int channels, int bits, int? frameBytes = null)
    {
        int frame = frameBytes ?? channels * bits / 8;
        return Chunk("fmt ", Bytes(coding, (ushort)channels, rate, rate * frame, (ushort)frame, (ushort)bits));
    }

    public RiffBuilder Extensible(ushort coding, int rate, int channels, int bits)
    {
        int frame = channels * bits / 8;
        byte[] guidTail = [0, 0, 0, 0, 0x10, 0, 0x80, 0, 0, 0xAA, 0, 0x38, 0x9B, 0x71];
        byte[] head = Bytes((ushort)0xFFFE, (ushort)channels, rate, rate * frame, (ushort)frame, (ushort)bits);
        return Chunk("fmt ", [.. head, .. Bytes((ushort)22, (ushort)bits, channels == 1 ? 4 : 3, coding), .. guidTail]);
    }

    public RiffBuilder Data(byte[] data, uint? statedLength = null) => Chunk("data", data, statedLength);

    public RiffBuilder Chunk(string id, byte[] data, uint? statedLength = null)
    {
        _body.Write(Encoding.ASCII.GetBytes(id));
        _body.Write(BitConverter.GetBytes(statedLength ?? (uint)data.Length));
        _body.Write(data);
        if (data.Length % 2 == 1)
        {
            _body.WriteByte(0);
        }

        return this;
    }

    public byte[] Build(uint? statedLength = null, string riff = "RIFF", string wave = "WAVE") =>
    [
        .. Encoding.ASCII.GetBytes(riff),
        .. BitConverter.GetBytes(statedLength ?? (uint)(4 + _body.Length)),
        .. Encoding.ASCII.GetBytes(wave),
        .. _body.ToArray(),
    ];

    /// <summary>16 and 32 bit values, least byte first.</summary>
    public static byte[] Bytes(params object[] values)
    {
        MemoryStream bytes = new();
        foreach (object value in values)
        {
            bytes.Write(value switch
            {
                ushort word => BitConverter.GetBytes(word),
                short word => BitConverter.GetBytes(word),
                int number => BitConverter.GetBytes(number),
                float number => BitConverter.GetBytes(number),
                double number => BitConverter.GetBytes(number),
                byte[] all => all,
                _ => throw new ArgumentException($"{value.GetType()} is not known here."),
            });
        }

        return bytes.ToArray();
    }
}
