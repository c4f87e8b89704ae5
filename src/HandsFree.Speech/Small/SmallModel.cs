using System.Reflection;
using HandsFree.Audio.Runtime;
using HandsFree.Language.Grammars;
using Microsoft.ML.OnnxRuntime;

namespace HandsFree.Speech.Small;

/// <summary>The network, from the resources of this assembly: log-mel values in, one row of log probabilities for each 40 ms out.</summary>
internal sealed class SmallModel : IDisposable
{
    /// <summary>Frames of mel values that the network wants before and after the utterance.</summary>
    internal const int Before = 38, After = 37;

    /// <summary>The place of the blank in a row.</summary>
    internal const int Blank = 0;

    /// <summary>The place of "any other word".</summary>
    internal const int Other = 1;

    /// <summary>What is shorter is filled up with silence: less gives the network no row.</summary>
    private const int LeastSamples = 1600;

    private const string Weights = "small.onnx", WordList = "small-words.txt";
    private readonly InferenceSession session;
    private readonly Dictionary<string, int> places;

    private SmallModel(InferenceSession session, string[] words)
    {
        this.session = session;
        Words = words;
        places = words.Select((word, i) => (word, i)).ToDictionary(w => w.word, w => w.i + 2, StringComparer.Ordinal);
    }

    /// <summary>The words that the network knows; the first has place 2.</summary>
    internal IReadOnlyList<string> Words { get; }

    /// <summary>Values of one row.</summary>
    internal int Width => Words.Count + 2;

    /// <summary>Loads it.</summary>
    /// <param name="threads">Processor threads for one hearing, from 1.</param>
    internal static SmallModel Load(int threads)
    {
        using SessionOptions options = SilentRuntime.Options();
        options.IntraOpNumThreads = threads;
        options.InterOpNumThreads = 1;
        options.GraphOptimizationLevel = GraphOptimizationLevel.ORT_ENABLE_ALL;
        options.EnableMemoryPattern = false;
        options.EnableCpuMemArena = false;
        using var text = new StreamReader(Resource(WordList));
        string[] words = text.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        using var bytes = new MemoryStream();
        using Stream weights = Resource(Weights);
        weights.CopyTo(bytes);
        return new(new InferenceSession(bytes.ToArray(), options), words);
    }

    /// <summary>The place of a word in a row; null for a word that is none of <see cref="Words"/>.</summary>
    internal int? Place(string word) => places.TryGetValue(word, out int place) ? place : null;

    /// <summary>The words that the network does not know, sorted.</summary>
    internal string[] Missing(IEnumerable<Grammar> grammars) =>
        [.. grammars.SelectMany(g => g.Words).Where(w => !places.ContainsKey(w)).Distinct().Order(StringComparer.Ordinal)];

    /// <summary>Runs the network.</summary>
    /// <param name="samples">16 kHz mono in [-1, 1].</param>
    /// <returns>Logits, rows of <see cref="Width"/>.</returns>
    internal float[] Run(ReadOnlySpan<float> samples)
    {
        float[] padded = new float[Math.Max(samples.Length, LeastSamples) + (((Before + After) * LogMel.Hop) + 512 - LogMel.Hop)];
        samples.CopyTo(padded.AsSpan(Before * LogMel.Hop));
        return RunOnMel(LogMel.Of(padded));
    }

    /// <summary>Runs the network on log-mel values: 76 frames at least.</summary>
    internal float[] RunOnMel(float[] mel)
    {
        using OrtValue input = OrtValue.CreateTensorValueFromMemory(mel, [1, mel.Length / LogMel.Bands, LogMel.Bands]);
        using var run = new RunOptions();
        using IDisposableReadOnlyCollection<OrtValue> output = session.Run(run, ["mel"], [input], ["logits"]);
        return output[0].GetTensorDataAsSpan<float>().ToArray();
    }

    /// <inheritdoc/>
    public void Dispose() => session.Dispose();

    private static Stream Resource(string name) => Assembly.GetExecutingAssembly().GetManifestResourceStream(name)
        ?? throw new InvalidOperationException($"the program was built without {name}; build it again");
}
