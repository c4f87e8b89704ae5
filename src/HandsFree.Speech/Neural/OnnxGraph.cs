using System.Runtime.InteropServices;

namespace HandsFree.Speech.Neural;

/// <summary>A part of an ONNX model as a model of its own (onnx.proto3).</summary>
internal sealed class OnnxGraph
{
    private const int ModelGraph = 7;
    private const int NodeField = 1, NameField = 2, ConstantField = 5, InputField = 11, OutputField = 12, ValueName = 1;

    /// <summary>Weights that share a scale; the runtime's kernels take 16, 32, 64 and so on.</summary>
    private const int Block = 32;

    private readonly ProtoMessage model;
    private readonly Dictionary<string, ReadOnlyMemory<byte>> inputs;
    private readonly Dictionary<string, ReadOnlyMemory<byte>> outputs;
    private readonly Dictionary<string, OnnxTensor> constants;
    private List<OnnxNode> nodes;

    /// <summary>Reads a model. Of its If node, which there may be one of, a branch takes the place.</summary>
    /// <param name="bytes">The model.</param>
    /// <param name="branch">then_branch or else_branch.</param>
    public OnnxGraph(ReadOnlyMemory<byte> bytes, string branch)
    {
        model = ProtoMessage.Parse(bytes);
        var graph = ProtoMessage.Parse(model.All(ModelGraph).Single());
        nodes = Nodes(graph);
        inputs = ByName(graph, InputField);
        outputs = ByName(graph, OutputField);
        var tensors = graph.All(ConstantField).ToList();
        if (nodes.SingleOrDefault(n => n.Operator == "If") is { } choice)
        {
            ProtoMessage inner = choice.Branch(branch);
            nodes.Remove(choice);
            nodes.AddRange(Nodes(inner));
            tensors.AddRange(inner.All(ConstantField));
        }

        constants = tensors.Select(t => new OnnxTensor(t)).ToDictionary(t => t.Name);
    }

    /// <summary>Puts arithmetic on the stored int8 weights in the place of their unfolding into floats: weights are stored as
    /// q, scale and offset with weight = scale·q + offset, written as the nodes Cast, Mul and Add. A product with such a weight
    /// becomes MatMulNBits with 8 bits, and a row of it is looked up before it is unfolded.</summary>
    public void KeepWeightsSmall()
    {
        var maker = nodes.SelectMany(n => n.Outputs.Select(o => (o, n))).ToDictionary(p => p.o, p => p.n);
        var changed = new List<OnnxNode>();
        foreach (OnnxNode node in nodes)
        {
            if (node.Operator == "MatMul" && Weight(maker, node.Inputs[1]) is { } weight)
            {
                changed.Add(Product(node, weight, isTransposed: false));
            }
            else if (node.Operator == "MatMul" && maker.GetValueOrDefault(node.Inputs[1]) is { Operator: "Transpose" } turned && Weight(maker, turned.Inputs[0]) is { } table)
            {
                changed.Add(Product(node, table, isTransposed: true));
            }
            else if (node.Operator == "Gather" && Weight(maker, node.Inputs[0]) is { } rows)
            {
                string output = node.Outputs[0];
                changed.Add(OnnxNode.Make("", "Gather", [rows.Values.Name, node.Inputs[1]], output + " stored", ("axis", 0)));
                changed.Add(OnnxNode.Make("", "Cast", [output + " stored"], output + " cast", ("to", OnnxTensor.Float)));
                changed.Add(OnnxNode.Make("", "Mul", [output + " cast", rows.Scale.Name], output + " scaled"));
                changed.Add(OnnxNode.Make("", "Add", [output + " scaled", rows.Offset.Name], output));
            }
            else
            {
                changed.Add(node);
            }
        }

        nodes = changed;
    }

    /// <summary>Lets every Shape node look at one input. A part that asks a hidden state only for the number of rows then needs
    /// nothing that computes that state.</summary>
    public void TakeShapesFrom(string input) =>
        nodes = [.. nodes.Select(n => n.Operator == "Shape" ? OnnxNode.Make("", "Shape", [input], n.Outputs[0]) : n)];

    /// <summary>The model that computes the outputs, with nothing in it that they don't need.</summary>
    public byte[] For(Func<string, bool> isWanted)
    {
        string[] wanted = [.. outputs.Keys.Where(isWanted)];
        var needed = new HashSet<string>(wanted);
        var kept = new List<OnnxNode>();
        foreach (OnnxNode node in nodes.AsEnumerable().Reverse())
        {
            if (node.Outputs.Any(needed.Contains))
            {
                kept.Add(node);
                needed.UnionWith(node.Inputs);
            }
        }

        kept.Reverse();
        var graph = new ProtoMessage().Add(NameField, "part");
        Fill(graph, NodeField, kept.Select(n => n.Bytes));
        Fill(graph, ConstantField, constants.Values.Where(t => needed.Contains(t.Name)).Select(t => t.Bytes));
        Fill(graph, InputField, inputs.Where(i => needed.Contains(i.Key)).Select(i => i.Value));
        Fill(graph, OutputField, wanted.Select(o => outputs[o]));
        return model.With(ModelGraph, graph.ToBytes()).ToBytes();
    }

    private static void Fill(ProtoMessage graph, int number, IEnumerable<ReadOnlyMemory<byte>> contents)
    {
        foreach (ReadOnlyMemory<byte> content in contents)
        {
            graph.Add(number, content);
        }
    }

    private static List<OnnxNode> Nodes(ProtoMessage graph) => [.. graph.All(NodeField).Select(n => new OnnxNode(n))];

    private static Dictionary<string, ReadOnlyMemory<byte>> ByName(ProtoMessage graph, int number) =>
        graph.All(number).ToDictionary(v => ProtoMessage.Parse(v).Text(ValueName));

    private StoredWeight? Weight(Dictionary<string, OnnxNode> maker, string name) =>
        maker.GetValueOrDefault(name) is { Operator: "Add" } add && maker.GetValueOrDefault(add.Inputs[0]) is { Operator: "Mul" } mul
        && maker.GetValueOrDefault(mul.Inputs[0]) is { Operator: "Cast" } cast && constants.TryGetValue(cast.Inputs[0], out OnnxTensor? values)
        && constants.TryGetValue(mul.Inputs[1], out OnnxTensor? scale) && constants.TryGetValue(add.Inputs[1], out OnnxTensor? offset)
        && values.Shape.Length == 2
            ? new(values, scale, offset) : null;

    private OnnxNode Product(OnnxNode node, StoredWeight weight, bool isTransposed)
    {
        int[] shape = weight.Values.Shape;
        var (rows, columns) = isTransposed ? (shape[1], shape[0]) : (shape[0], shape[1]);
        int blocks = rows / Block;
        float scale = weight.Scale.Single;
        double zero = 128 - (weight.Offset.Single / scale);
        if (rows % Block != 0 || zero is < 0 or > 255 || Math.Abs(zero - Math.Round(zero)) > 0.01)
        {
            throw new InvalidDataException($"weight {weight.Values.Name} of {rows} x {columns}, scale {scale}, zero point {zero}: no 8 bit product for it");
        }

        string name = weight.Values.Name;
        if (!constants.ContainsKey(name + " blocks"))
        {
            ReadOnlySpan<byte> stored = weight.Values.Raw.Span;
            byte[] turned = new byte[stored.Length];
            for (int column = 0; column < columns; column++)
            {
                for (int row = 0; row < rows; row++)
                {
                    turned[(column * rows) + row] = (byte)(stored[isTransposed ? (column * rows) + row : (row * columns) + column] ^ 0x80);
                }
            }

            float[] scales = new float[columns * blocks];
            Array.Fill(scales, scale);
            byte[] zeros = new byte[columns * blocks];
            Array.Fill(zeros, (byte)Math.Round(zero));
            Add(OnnxTensor.Make(name + " blocks", OnnxTensor.UInt8, [columns, blocks, Block], turned));
            Add(OnnxTensor.Make(name + " scales", OnnxTensor.Float, [columns, blocks], MemoryMarshal.AsBytes<float>(scales).ToArray()));
            Add(OnnxTensor.Make(name + " zeros", OnnxTensor.UInt8, [columns, blocks], zeros));
        }

        return OnnxNode.Make("com.microsoft", "MatMulNBits", [node.Inputs[0], name + " blocks", name + " scales", name + " zeros"], node.Outputs[0],
            ("K", rows), ("N", columns), ("bits", 8), ("block_size", Block), ("accuracy_level", 4));
    }

    private void Add(OnnxTensor tensor) => constants.Add(tensor.Name, tensor);

    private sealed record StoredWeight(OnnxTensor Values, OnnxTensor Scale, OnnxTensor Offset);
}
