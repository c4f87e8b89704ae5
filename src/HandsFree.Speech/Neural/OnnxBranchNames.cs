namespace HandsFree.Speech.Neural;

/// <summary>Gives the branches of If nodes a graph name in a serialised ONNX model. The runtime writes them without one and then
/// refuses to load its own file. Works on the protobuf wire format: model field 7 is the graph, graph field 1 a node, node field 5
/// an attribute, attribute field 6 a sub-graph, graph field 2 its name (onnx.proto3).</summary>
internal static class OnnxBranchNames
{
    private const int Varint = 0, Fixed64 = 1, Bytes = 2, Fixed32 = 5;
    private const int ModelGraph = 7, GraphNode = 1, GraphName = 2, NodeAttribute = 5, AttributeGraph = 6;

    /// <summary>Copies the model with the names put in.</summary>
    /// <exception cref="InvalidDataException">The bytes are no protobuf message.</exception>
    public static void Rewrite(ReadOnlySpan<byte> model, Stream output) =>
        Each(model, output, ModelGraph, static (graph, inModel) =>
            Each(graph, inModel, GraphNode, static (node, inGraph) =>
                Each(node, inGraph, NodeAttribute, static (attribute, inNode) =>
                    Each(attribute, inNode, AttributeGraph, static (branch, inAttribute) =>
                    {
                        inAttribute.Write(branch);
                        if (!HasName(branch))
                        {
                            Write(inAttribute, (GraphName << 3) | Bytes, "branch"u8);
                        }
                    }))));

    private delegate void Rewriting(ReadOnlySpan<byte> content, Stream output);

    private static void Each(ReadOnlySpan<byte> message, Stream output, int wanted, Rewriting rewriting)
    {
        int at = 0;
        while (at < message.Length)
        {
            int start = at;
            ulong key = ReadVarint(message, ref at);
            if ((key & 7) != Bytes)
            {
                Skip(message, (int)(key & 7), ref at);
                output.Write(message[start..at]);
                continue;
            }

            int length = (int)ReadVarint(message, ref at);
            ReadOnlySpan<byte> content = message.Slice(at, length);
            at += length;
            if ((int)(key >> 3) != wanted)
            {
                output.Write(message[start..at]);
                continue;
            }

            using var inner = new MemoryStream(length + 64);
            rewriting(content, inner);
            Write(output, key, inner.GetBuffer().AsSpan(0, (int)inner.Length));
        }
    }

    /// <summary>Whether there is a name that is not empty. A second name field overrides an empty first one.</summary>
    private static bool HasName(ReadOnlySpan<byte> graph)
    {
        int at = 0;
        while (at < graph.Length)
        {
            ulong key = ReadVarint(graph, ref at);
            int start = at;
            Skip(graph, (int)(key & 7), ref at);
            if ((int)(key >> 3) == GraphName && at - start > 1)
            {
                return true;
            }
        }

        return false;
    }

    private static void Write(Stream output, ulong key, ReadOnlySpan<byte> content)
    {
        WriteVarint(output, key);
        WriteVarint(output, (ulong)content.Length);
        output.Write(content);
    }

    private static void Skip(ReadOnlySpan<byte> message, int wireType, ref int at)
    {
        switch (wireType)
        {
            case Varint:
                ReadVarint(message, ref at);
                break;
            case Fixed64:
                at += sizeof(ulong);
                break;
            case Fixed32:
                at += sizeof(uint);
                break;
            case Bytes:
                int length = (int)ReadVarint(message, ref at);
                at += length;
                break;
            default:
                throw new InvalidDataException($"wire type {wireType} in a model file; expected a protobuf message");
        }
    }

    private static ulong ReadVarint(ReadOnlySpan<byte> message, ref int at)
    {
        ulong value = 0;
        for (int shift = 0; shift < 64; shift += 7)
        {
            byte next = message[at++];
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
}
