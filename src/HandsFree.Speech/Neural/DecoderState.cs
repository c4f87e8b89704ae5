using Microsoft.ML.OnnxRuntime;

namespace HandsFree.Speech.Neural;

/// <summary>One utterance in the decoder: the encoder's frames, its keys and values, and the keys and values of every hypothesis
/// (row) so far. Rows share the first two, which lie in memory once for each row that a step may have.</summary>
internal sealed class DecoderState : IDisposable
{
    private const int TensorsPerLayer = 2;
    private static readonly string[] PastDecoder = Names("past_key_values.{0}.decoder.{1}");
    private static readonly string[] PastEncoder = Names("past_key_values.{0}.encoder.{1}");
    private static readonly string[] PresentDecoder = Names("present.{0}.decoder.{1}");
    private static readonly string[] PresentEncoder = Names("present.{0}.encoder.{1}");
    private static readonly string[] StepInputs = ["input_ids", "encoder_hidden_states", "use_cache_branch", .. PastDecoder, .. PastEncoder];
    private static readonly string[] StepOutputs = ["logits", .. PresentDecoder];
    private static readonly string[] FirstOutputs = [.. StepOutputs, .. PresentEncoder];

    private readonly NeuralModel model;
    private readonly RunOptions run = new();
    private readonly int frames;
    private readonly int mostRows;
    private readonly float[] hidden;
    private readonly float[][] encoderCache;
    private IDisposableReadOnlyCollection<OrtValue>? last;
    private int length;

    /// <summary>Runs the encoder.</summary>
    /// <param name="model">The model.</param>
    /// <param name="samples">16 kHz mono.</param>
    /// <param name="mostRows">The most rows that a step will have.</param>
    public DecoderState(NeuralModel model, float[] samples, int mostRows)
    {
        this.model = model;
        this.mostRows = mostRows;
        using OrtValue input = OrtValue.CreateTensorValueFromMemory(samples, [1, samples.Length]);
        using IDisposableReadOnlyCollection<OrtValue> output = model.Encoder.Run(run, ["input_values"], [input], ["last_hidden_state"]);
        ReadOnlySpan<float> states = output[0].GetTensorDataAsSpan<float>();
        frames = states.Length / NeuralModel.FrameSize;
        hidden = Repeated(states, mostRows);
        encoderCache = new float[NeuralModel.Layers * TensorsPerLayer][];
    }

    /// <summary>Encoder frames, one for about 24 ms.</summary>
    public int Frames => frames;

    /// <summary>Decodes the start token: one row.</summary>
    /// <returns>The logits of the first token; valid until the next step.</returns>
    public ReadOnlySpan<float> First()
    {
        using var inputs = new DisposableList();
        inputs.Add(Tensor(new long[] { Vocabulary.Start }, [1, 1]));
        inputs.Add(Tensor(hidden.AsMemory(0, frames * NeuralModel.FrameSize), [1, frames, NeuralModel.FrameSize]));
        inputs.Add(Tensor(new[] { false }, [1]));
        for (int i = 0; i < 2 * NeuralModel.Layers * TensorsPerLayer; i++)
        {
            inputs.Add(Tensor(Array.Empty<float>(), [1, NeuralModel.Heads, 0, NeuralModel.HeadSize]));
        }

        last = model.Decoder.Run(run, StepInputs, inputs, FirstOutputs);
        for (int i = 0; i < encoderCache.Length; i++)
        {
            encoderCache[i] = Repeated(last[StepOutputs.Length + i].GetTensorDataAsSpan<float>(), mostRows);
        }

        length = 1;
        return last[0].GetTensorDataAsSpan<float>();
    }

    /// <summary>Decodes one token for each row.</summary>
    /// <param name="rows">For each new row the row of the step before that it continues, and its token.</param>
    /// <returns>The logits, one vocabulary after the other; valid until the next step.</returns>
    public ReadOnlySpan<float> Step(ReadOnlySpan<(int Parent, int Token)> rows)
    {
        int count = rows.Length;
        long[] ids = new long[count];
        for (int i = 0; i < count; i++)
        {
            ids[i] = rows[i].Token;
        }

        using var inputs = new DisposableList();
        inputs.Add(Tensor(ids, [count, 1]));
        inputs.Add(Tensor(hidden.AsMemory(0, count * frames * NeuralModel.FrameSize), [count, frames, NeuralModel.FrameSize]));
        inputs.Add(Tensor(new[] { true }, [1]));
        int size = NeuralModel.Heads * length * NeuralModel.HeadSize;
        for (int i = 0; i < PresentDecoder.Length; i++)
        {
            ReadOnlySpan<float> before = last![1 + i].GetTensorDataAsSpan<float>();
            float[] gathered = new float[count * size];
            for (int row = 0; row < count; row++)
            {
                before.Slice(rows[row].Parent * size, size).CopyTo(gathered.AsSpan(row * size));
            }

            inputs.Add(Tensor(gathered, [count, NeuralModel.Heads, length, NeuralModel.HeadSize]));
        }

        int cached = encoderCache[0].Length / mostRows;
        foreach (float[] cache in encoderCache)
        {
            inputs.Add(Tensor(cache.AsMemory(0, count * cached), [count, NeuralModel.Heads, cached / FrameCells, NeuralModel.HeadSize]));
        }

        IDisposableReadOnlyCollection<OrtValue> output = model.Decoder.Run(run, StepInputs, inputs, StepOutputs);
        last!.Dispose();
        last = output;
        length++;
        return last[0].GetTensorDataAsSpan<float>();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        last?.Dispose();
        run.Dispose();
    }

    private const int FrameCells = NeuralModel.Heads * NeuralModel.HeadSize;

    private static float[] Repeated(ReadOnlySpan<float> values, int times)
    {
        float[] repeated = new float[values.Length * times];
        for (int i = 0; i < times; i++)
        {
            values.CopyTo(repeated.AsSpan(i * values.Length));
        }

        return repeated;
    }

    private static OrtValue Tensor<T>(Memory<T> values, long[] shape)
        where T : unmanaged => OrtValue.CreateTensorValueFromMemory(OrtMemoryInfo.DefaultInstance, values, shape);

    private static OrtValue Tensor<T>(T[] values, long[] shape)
        where T : unmanaged => Tensor(values.AsMemory(), shape);

    private static string[] Names(string pattern) =>
        [.. from layer in Enumerable.Range(0, NeuralModel.Layers) from part in (string[])["key", "value"] select string.Format(System.Globalization.CultureInfo.InvariantCulture, pattern, layer, part)];

    private sealed class DisposableList : List<OrtValue>, IDisposable
    {
        public void Dispose() => ForEach(v => v.Dispose());
    }
}
