using System.Text;

namespace HandsFree.Speech.Neural;

/// <summary>A message on the protobuf wire: its fields in their order. Enough to read, change and write an ONNX model.</summary>
internal sealed class ProtoMessage
{
    private const int Varint = 0, Fixed64 = 1, Bytes = 2, Fixed32 = 5;
    private readonly List<Field> fields = [];

    /// <summary>Reads a message.</summary>
    /// <exception cref="InvalidDataException">The bytes are no protobuf message.</exception>
    public static ProtoMessage Parse(ReadOnlyMemory<byte> bytes)
    {
        var message = new ProtoMessage();
        ReadOnlySpan<byte> span = bytes.Span;
        int at = 0;
        while (at < span.Length)
        {
            ulong key = ReadVarint(span, ref at);
            int wire = (int)(key & 7);
            ulong value = wire is Varint or Bytes ? ReadVarint(span, ref at) : 0;
            int length = wire switch
            {
                Varint => 0,
                Bytes => (int)Math.Min(value, int.MaxValue),
                Fixed64 => sizeof(ulong),
                Fixed32 => sizeof(uint),
                _ => throw new InvalidDataException($"wire type {wire} in a model file; expected a protobuf message"),
            };
            if (length > span.Length - at)
            {
                throw new InvalidDataException("a field that is longer than its message in a model file; expected a protobuf message");
            }

            message.fields.Add(new((int)(key >> 3), wire, value, bytes.Slice(at, length)));
            at += length;
        }

        return message;
    }

    /// <summary>Contents of the fields of a number that hold bytes, texts or messages.</summary>
    public IEnumerable<ReadOnlyMemory<byte>> All(int number) => fields.Where(f => f.Number == number && f.Wire == Bytes).Select(f => f.Content);

    /// <summary>Texts of the fields of a number.</summary>
    public IEnumerable<string> Texts(int number) => All(number).Select(c => Encoding.UTF8.GetString(c.Span));

    /// <summary>The text of a field, or an empty one.</summary>
    public string Text(int number) => Texts(number).LastOrDefault("");

    /// <summary>The numbers of a repeated field, packed or not.</summary>
    public IEnumerable<long> Numbers(int number)
    {
        foreach (Field field in fields.Where(f => f.Number == number))
        {
            if (field.Wire == Varint)
            {
                yield return (long)field.Value;
                continue;
            }

            for (int at = 0; at < field.Content.Length;)
            {
                yield return (long)ReadVarint(field.Content.Span, ref at);
            }
        }
    }

    /// <summary>Adds a field of bytes.</summary>
    public ProtoMessage Add(int number, ReadOnlyMemory<byte> content)
    {
        fields.Add(new(number, Bytes, 0, content));
        return this;
    }

    /// <summary>Adds a text.</summary>
    public ProtoMessage Add(int number, string text) => Add(number, Encoding.UTF8.GetBytes(text));

    /// <summary>Adds a number.</summary>
    public ProtoMessage Add(int number, long value)
    {
        fields.Add(new(number, Varint, (ulong)value, default));
        return this;
    }

    /// <summary>The message with one field put in another's place.</summary>
    public ProtoMessage With(int number, ReadOnlyMemory<byte> content)
    {
        var changed = new ProtoMessage();
        changed.fields.AddRange(fields.Where(f => f.Number != number));
        return changed.Add(number, content);
    }

    /// <summary>The message with other texts in the fields of a number.</summary>
    public ProtoMessage WithTexts(int number, IEnumerable<string> texts)
    {
        var changed = new ProtoMessage();
        changed.fields.AddRange(fields.Where(f => f.Number != number));
        foreach (string text in texts)
        {
            changed.Add(number, text);
        }

        return changed;
    }

    /// <summary>The message as bytes.</summary>
    public byte[] ToBytes()
    {
        using var output = new MemoryStream();
        foreach (Field field in fields)
        {
            WriteVarint(output, ((ulong)field.Number << 3) | (uint)field.Wire);
            if (field.Wire is Varint or Bytes)
            {
                WriteVarint(output, field.Wire == Bytes ? (ulong)field.Content.Length : field.Value);
            }

            output.Write(field.Content.Span);
        }

        return output.ToArray();
    }

    private static ulong ReadVarint(ReadOnlySpan<byte> bytes, ref int at)
    {
        ulong value = 0;
        for (int shift = 0; shift < 64 && at < bytes.Length; shift += 7)
        {
            byte next = bytes[at++];
            value |= (ulong)(next & 0x7F) << shift;
            if (next < 0x80)
            {
                return value;
            }
        }

        throw new InvalidDataException("a number without end in a model file; expected a protobuf message");
    }

    private static void WriteVarint(Stream output, ulong value)
    {
        for (; value >= 0x80; value >>= 7)
        {
            output.WriteByte((byte)(value | 0x80));
        }

        output.WriteByte((byte)value);
    }

    private readonly record struct Field(int Number, int Wire, ulong Value, ReadOnlyMemory<byte> Content);
}
