using System.Reflection;
using HandsFree.Audio.Runtime;
using HandsFree.Language.Grammars;
using Microsoft.ML.OnnxRuntime;

namespace HandsFree.Speech.Words;

/// <summary>The network, from the resources of this assembly: samples in, one row of words for each 24 ms out.</summary>
internal sealed class WordsModel : IDisposable
{
    /// <summary>The place of the blank in a row.</summary>
    internal const int Blank = 0;

    /// <summary>The place of "any other word".</summary>
    internal const int Other = 1;

    /// <summary>Silence that the network wants before and after the utterance: 0.4 s.</summary>
    internal const int Around = 6_400;

    private const string Weights = "words-encoder.onnx";
    private readonly InferenceSession session;

    private WordsModel(InferenceSession session, WordList words)
    {
        this.session = session;
        Words = words;
    }

    /// <summary>The words that the network knows.</summary>
    internal WordList Words { get; }

    /// <summary>Values of one row.</summary>
    internal int Width => Words.Count + 2;

    /// <summary>Loads it.</summary>
    /// <param name="threads">Processor threads for one hearing, from 1.</param>
    internal static WordsModel Load(int threads)
    {
        using SessionOptions options = SilentRuntime.Options();
        options.IntraOpNumThreads = threads;
        options.InterOpNumThreads = 1;
        options.GraphOptimizationLevel = GraphOptimizationLevel.ORT_ENABLE_ALL;
        options.EnableMemoryPattern = false;
        options.EnableCpuMemArena = false;
        using Stream weights = Resource(Weights);
        byte[] bytes = new byte[weights.Length];
        weights.ReadExactly(bytes);
        return new(new InferenceSession(bytes, options), WordList.Carried());
    }

    /// <summary>The words of grammars that the network does not know, sorted.</summary>
    internal string[] Missing(IEnumerable<Grammar> grammars) =>
        [.. grammars.SelectMany(g => g.Words).Where(w => Words.Place(w) is null).Distinct().Order(StringComparer.Ordinal)];

    /// <summary>Runs the network.</summary>
    /// <param name="samples">16 kHz mono in [-1, 1].</param>
    /// <returns>Logits, rows of <see cref="Width"/>.</returns>
    internal float[] Run(ReadOnlySpan<float> samples)
    {
        float[] padded = new float[samples.Length + (2 * Around)];
        samples.CopyTo(padded.AsSpan(Around));
        using OrtValue input = OrtValue.CreateTensorValueFromMemory(padded, [1, padded.Length]);
        using var run = new RunOptions();
        using IDisposableReadOnlyCollection<OrtValue> output = session.Run(run, ["input_values"], [input], ["logits"]);
        return output[0].GetTensorDataAsSpan<float>().ToArray();
    }

    /// <inheritdoc/>
    public void Dispose() => session.Dispose();

    /// <summary>A file that the assembly carries.</summary>
    internal static Stream Resource(string name) => Assembly.GetExecutingAssembly().GetManifestResourceStream(name)
        ?? throw new InvalidOperationException($"the program was built without {name}; build it again");
}
