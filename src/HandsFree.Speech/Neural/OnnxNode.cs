namespace HandsFree.Speech.Neural;

/// <summary>A node of an ONNX graph (NodeProto of onnx.proto3).</summary>
internal sealed class OnnxNode(ReadOnlyMemory<byte> bytes)
{
    private const int InputField = 1, OutputField = 2, NameField = 3, OperatorField = 4, AttributeField = 5, DomainField = 7;
    private const int AttributeName = 1, AttributeInteger = 3, AttributeGraph = 6, AttributeType = 20, IntegerType = 2;
    private readonly ProtoMessage message = ProtoMessage.Parse(bytes);

    public ReadOnlyMemory<byte> Bytes { get; } = bytes;

    public string Operator => message.Text(OperatorField);

    /// <summary>Names of the values it takes; empty for one left out.</summary>
    public string[] Inputs => field ??= [.. message.Texts(InputField)];

    public string[] Outputs => field ??= [.. message.Texts(OutputField)];

    /// <summary>A graph among its attributes.</summary>
    public ProtoMessage Branch(string name) => ProtoMessage.Parse(message.All(AttributeField).Select(ProtoMessage.Parse)
        .Single(a => a.Text(AttributeName) == name).All(AttributeGraph).Single());

    /// <summary>The node with another value for one of its inputs.</summary>
    public OnnxNode Taking(int input, string value)
    {
        string[] taken = [.. Inputs];
        taken[input] = value;
        return new(message.WithTexts(InputField, taken).ToBytes());
    }

    /// <summary>A new node whose attributes are whole numbers.</summary>
    public static OnnxNode Make(string domain, string op, string[] inputs, string output, params (string Name, long Value)[] attributes)
    {
        var node = new ProtoMessage();
        foreach (string input in inputs)
        {
            node.Add(InputField, input);
        }

        node.Add(OutputField, output).Add(NameField, $"{op} of {output}").Add(OperatorField, op);
        foreach (var (name, value) in attributes)
        {
            node.Add(AttributeField, new ProtoMessage().Add(AttributeName, name).Add(AttributeInteger, value).Add(AttributeType, IntegerType).ToBytes());
        }

        return new(node.Add(DomainField, domain).ToBytes());
    }
}
