namespace HandsFree.Speech.Neural;

/// <summary>A part of an ONNX model as a model of its own (onnx.proto3).</summary>
internal sealed class OnnxGraph
{
    private const int ModelGraph = 7;
    private const int NodeField = 1, NameField = 2, ConstantField = 5, InputField = 11, OutputField = 12, ValueName = 1;

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

    /// <summary>Unfolds the weights of products into floats when the model runs: a quarter of the memory for a little time, and the
    /// same numbers. Weights are stored as q, scale and offset with weight = scale·q + offset, written as the nodes Cast, Mul and Add.</summary>
    public void UnfoldWhenRun()
    {
        Dictionary<string, OnnxNode> maker = Makers();
        var changed = new List<OnnxNode>();
        foreach (OnnxNode node in nodes)
        {
            if (node.Operator == "MatMul" && Weight(maker, node.Inputs[1]) is { } weight)
            {
                string zero = weight.Values.Name + " zero", unfolded = node.Outputs[0] + " weight";
                constants.TryAdd(zero, OnnxTensor.Make(zero, OnnxTensor.Int8, [], new[] { (byte)weight.Zero }));
                changed.Add(OnnxNode.Make("", "DequantizeLinear", [weight.Values.Name, weight.Scale.Name, zero], unfolded));
                changed.Add(node.Taking(1, unfolded));
            }
            else
            {
                changed.Add(node);
            }
        }

        nodes = changed;
    }

    /// <summary>Looks a token up among the stored int8 rows and unfolds only that row, not the table.</summary>
    public void LookUpBeforeUnfolding()
    {
        Dictionary<string, OnnxNode> maker = Makers();
        var changed = new List<OnnxNode>();
        foreach (OnnxNode node in nodes)
        {
            if (node.Operator == "Gather" && Weight(maker, node.Inputs[0]) is { } rows)
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

    /// <summary>Puts what an output's last product takes in the place of the output.</summary>
    /// <param name="output">The output: a product with a transposed table.</param>
    /// <param name="instead">The new output's name.</param>
    /// <returns>The table with its scale and offset.</returns>
    public OnnxWeight CutLastProduct(string output, string instead)
    {
        Dictionary<string, OnnxNode> maker = Makers();
        OnnxNode product = maker[output];
        OnnxWeight table = product.Operator == "MatMul" && maker.GetValueOrDefault(product.Inputs[1]) is { Operator: "Transpose" } turned
            ? Weight(maker, turned.Inputs[0]) ?? throw NoProduct(output) : throw NoProduct(output);
        nodes.Add(OnnxNode.Make("", "Identity", [product.Inputs[0]], instead));
        outputs.Remove(output);
        outputs.Add(instead, OnnxTensor.Info(instead));
        return table;
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

    private Dictionary<string, OnnxNode> Makers() =>
        nodes.SelectMany(n => n.Outputs.Select(o => (o, n))).ToDictionary(p => p.o, p => p.n);

    private static InvalidDataException NoProduct(string output) =>
        new($"{output} of the model is no product with a stored table; get the model again");

    private OnnxWeight? Weight(Dictionary<string, OnnxNode> maker, string name) =>
        maker.GetValueOrDefault(name) is { Operator: "Add" } add && maker.GetValueOrDefault(add.Inputs[0]) is { Operator: "Mul" } mul
        && maker.GetValueOrDefault(mul.Inputs[0]) is { Operator: "Cast" } cast && constants.TryGetValue(cast.Inputs[0], out OnnxTensor? values)
        && constants.TryGetValue(mul.Inputs[1], out OnnxTensor? scale) && constants.TryGetValue(add.Inputs[1], out OnnxTensor? offset)
        && values.Shape.Length == 2
            ? new(values, scale, offset) : null;
}
