using System.Buffers;
using Microsoft.ML.OnnxRuntime;

namespace HandsFree.Speech.Neural;

/// <summary>One utterance in the decoder: the keys and values of the encoder's frames, and the keys and values of every hypothesis
/// (row) so far. All rows share the first, which lie in memory once: the products in the graph broadcast them.</summary>
internal sealed class DecoderState : IDisposable
{
    private const int TensorsPerLayer = 2;
    private const int Tensors = NeuralModel.Layers * TensorsPerLayer;
    private static readonly string[] PastDecoder = Names("past_key_values.{0}.decoder.{1}");
    private static readonly string[] PastEncoder = Names("past_key_values.{0}.encoder.{1}");
    private static readonly string[] PresentEncoder = Names("present.{0}.encoder.{1}");
    private static readonly (int Parent, int Token)[] Beginning = [(0, Vocabulary.Start)];
    private static readonly string[] StepInputs = ["input_ids", .. PastDecoder, .. PastEncoder];
    private static readonly string[] StepOutputs = [PreparedModel.LastState, .. Names("present.{0}.decoder.{1}")];

    private readonly NeuralModel model;
    private readonly RunOptions run = new();
    private readonly int frames;
    private readonly long[] ids;
    private readonly float[][] gathered = new float[Tensors][];
    private readonly OrtValue[] inputs = new OrtValue[StepInputs.Length];
    private readonly IDisposableReadOnlyCollection<OrtValue> keys;
    private IDisposableReadOnlyCollection<OrtValue>? last;
    private int lastRows;
    private int length;

    /// <summary>Runs the encoder.</summary>
    /// <param name="model">The model.</param>
    /// <param name="samples">16 kHz mono.</param>
    /// <param name="mostRows">The most rows that a step will have.</param>
    public DecoderState(NeuralModel model, float[] samples, int mostRows)
    {
        this.model = model;
        ids = new long[mostRows];
        using OrtValue input = OrtValue.CreateTensorValueFromMemory(samples, [1, samples.Length]);
        using IDisposableReadOnlyCollection<OrtValue> states = model.Encoder.Run(run, ["input_values"], [input], ["last_hidden_state"]);
        keys = model.Keys.Run(run, ["encoder_hidden_states"], [states[0]], PresentEncoder);
        frames = states[0].GetTensorDataAsSpan<float>().Length / NeuralModel.FrameSize;
        for (int i = 0; i < Tensors; i++)
        {
            gathered[i] = [];
        }
    }

    /// <summary>Encoder frames, one for about 24 ms.</summary>
    public int Frames => frames;

    /// <summary>Decodes the start token: one row.</summary>
    /// <returns>The logits of the first token; valid until the next step.</returns>
    public ReadOnlySpan<float> First() => Step(Beginning);

    /// <summary>Decodes one token for each row.</summary>
    /// <param name="rows">For each new row the row of the step before that it continues, and its token.</param>
    /// <returns>The logits, one vocabulary after the other; valid until the next step.</returns>
    public ReadOnlySpan<float> Step(ReadOnlySpan<(int Parent, int Token)> rows)
    {
        int count = rows.Length;
        bool isSame = last is not null && count == lastRows;
        for (int i = 0; i < count; i++)
        {
            ids[i] = rows[i].Token;
            isSame &= rows[i].Parent == i;
        }

        inputs[0] = Tensor(ids.AsMemory(0, count), [count, 1]);
        for (int i = 0; i < Tensors; i++)
        {
            inputs[1 + i] = isSame ? last![1 + i] : Gathered(i, rows);
            inputs[1 + Tensors + i] = keys[i];
        }

        IDisposableReadOnlyCollection<OrtValue> output = model.Decoder.Run(run, StepInputs, inputs, StepOutputs);
        for (int i = 0; i <= Tensors && (i == 0 || !isSame); i++)
        {
            inputs[i].Dispose();
        }

        last?.Dispose();
        last = output;
        lastRows = count;
        length++;
        return model.Table.Logits(last[0].GetTensorDataAsSpan<float>());
    }

    /// <summary>The past of the rows that the new ones continue; where each goes on by itself the last output is the past.</summary>
    private OrtValue Gathered(int tensor, ReadOnlySpan<(int Parent, int Token)> rows)
    {
        int size = NeuralModel.FrameSize * length;
        int needed = rows.Length * size;
        if (gathered[tensor].Length < needed)
        {
            ArrayPool<float>.Shared.Return(gathered[tensor]);
            gathered[tensor] = ArrayPool<float>.Shared.Rent(needed + (needed / 4));
        }

        for (int row = 0; row < rows.Length && last is not null; row++)
        {
            last[1 + tensor].GetTensorDataAsSpan<float>().Slice(rows[row].Parent * size, size).CopyTo(gathered[tensor].AsSpan(row * size));
        }

        return Tensor(gathered[tensor].AsMemory(0, needed), [rows.Length, NeuralModel.Heads, length, NeuralModel.HeadSize]);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        last?.Dispose();
        keys.Dispose();
        foreach (float[] past in gathered)
        {
            ArrayPool<float>.Shared.Return(past);
        }

        run.Dispose();
    }

    private static OrtValue Tensor<T>(Memory<T> values, long[] shape)
        where T : unmanaged => OrtValue.CreateTensorValueFromMemory(OrtMemoryInfo.DefaultInstance, values, shape);

    private static string[] Names(string pattern) =>
        [.. from layer in Enumerable.Range(0, NeuralModel.Layers) from part in (string[])["key", "value"] select string.Format(System.Globalization.CultureInfo.InvariantCulture, pattern, layer, part)];
}
