namespace HandsFree.Speech.Neural;

/// <summary>A constant of an ONNX graph (TensorProto of onnx.proto3).</summary>
internal sealed class OnnxTensor(ReadOnlyMemory<byte> bytes)
{
    public const int Float = 1, UInt8 = 2, Int8 = 3;
    private const int DimensionField = 1, TypeField = 2, FloatField = 4, NameField = 8, RawField = 9;
    private readonly ProtoMessage message = ProtoMessage.Parse(bytes);

    public ReadOnlyMemory<byte> Bytes { get; } = bytes;

    public string Name => message.Text(NameField);

    public int[] Shape => [.. message.Numbers(DimensionField).Select(d => (int)d)];

    /// <summary>The numbers, little-endian, row after row.</summary>
    public ReadOnlyMemory<byte> Raw => message.All(RawField).SingleOrDefault();

    /// <summary>The one number of a constant of type float.</summary>
    public float Single => BitConverter.ToSingle(Raw.IsEmpty ? message.All(FloatField).Single().Span : Raw.Span);

    public static OnnxTensor Make(string name, int type, int[] shape, ReadOnlyMemory<byte> raw)
    {
        var tensor = new ProtoMessage();
        foreach (int size in shape)
        {
            tensor.Add(DimensionField, size);
        }

        return new(tensor.Add(TypeField, type).Add(NameField, name).Add(RawField, raw).ToBytes());
    }

    /// <summary>The description of an output (ValueInfoProto) of floats whose shape is not said.</summary>
    public static ReadOnlyMemory<byte> Info(string name) => new ProtoMessage().Add(1, name)
        .Add(2, new ProtoMessage().Add(1, new ProtoMessage().Add(1, Float).ToBytes()).ToBytes()).ToBytes();
}
