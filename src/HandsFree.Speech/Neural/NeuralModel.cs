using HandsFree.Audio.Runtime;
using Microsoft.ML.OnnxRuntime;

namespace HandsFree.Speech.Neural;

/// <summary>Encoder, decoder and vocabulary of one model folder, loaded once.</summary>
internal sealed class NeuralModel : IDisposable
{
    /// <summary>Decoder layers.</summary>
    public const int Layers = 8;

    /// <summary>Attention heads a layer.</summary>
    public const int Heads = 8;

    /// <summary>Numbers a head and position.</summary>
    public const int HeadSize = 52;

    /// <summary>Numbers an encoder frame.</summary>
    public const int FrameSize = Heads * HeadSize;

    private NeuralModel(InferenceSession encoder, InferenceSession keys, InferenceSession decoder, TokenTable table, Vocabulary vocabulary)
    {
        Encoder = encoder;
        Keys = keys;
        Decoder = decoder;
        Table = table;
        Vocabulary = vocabulary;
    }

    /// <summary>input_values [1, samples] to last_hidden_state [1, frames, 416].</summary>
    public InferenceSession Encoder { get; }

    /// <summary>encoder_hidden_states [1, frames, 416] to the keys and values that every step looks at,
    /// present.{0..7}.encoder.{key,value} [1, 8, frames, 52].</summary>
    public InferenceSession Keys { get; }

    /// <summary>One token to the last state of the next.</summary>
    public InferenceSession Decoder { get; }

    /// <summary>From that state to the logits.</summary>
    public TokenTable Table { get; }

    /// <summary>The tokens.</summary>
    public Vocabulary Vocabulary { get; }

    /// <summary>The files that a model folder must hold.</summary>
    public static IReadOnlyList<string> Files { get; } = ["encoder_model.ort", "decoder_model_merged.ort", "tokenizer.bin"];

    /// <summary>Loads the model; the first time it is prepared, which takes some ten seconds.</summary>
    /// <param name="folder">The model's folder, with <see cref="Files"/> in it.</param>
    /// <param name="cacheFolder">Where the prepared files are kept.</param>
    /// <param name="threads">Threads for one step; one is nearly as fast as two.</param>
    public static NeuralModel Load(string folder, string cacheFolder, int threads)
    {
        var prepared = new PreparedModel(cacheFolder);
        string decoder = Path.Combine(folder, Files[1]);
        string encoderFile = prepared.Encoder(Path.Combine(folder, Files[0])), keysFile = prepared.Keys(decoder), stepFile = prepared.Step(decoder), tableFile = prepared.Table(decoder);
        Task<InferenceSession> encoder = Task.Run(() => Open(encoderFile, threads));
        Task<InferenceSession> keys = Task.Run(() => Open(keysFile, threads));
        Task<InferenceSession> step = Task.Run(() => Open(stepFile, threads));
        Vocabulary vocabulary = Vocabulary.Read(Path.Combine(folder, Files[2]));
        return new(encoder.GetAwaiter().GetResult(), keys.GetAwaiter().GetResult(), step.GetAwaiter().GetResult(), TokenTable.Read(tableFile), vocabulary);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Encoder.Dispose();
        Keys.Dispose();
        Decoder.Dispose();
    }

    private static InferenceSession Open(string path, int threads)
    {
        using SessionOptions options = SilentRuntime.Options();
        options.IntraOpNumThreads = threads;
        options.InterOpNumThreads = 1;
        options.GraphOptimizationLevel = GraphOptimizationLevel.ORT_DISABLE_ALL;
        options.EnableCpuMemArena = false;
        options.LogSeverityLevel = OrtLoggingLevel.ORT_LOGGING_LEVEL_ERROR;
        options.AddSessionConfigEntry("session.load_model_format", "ORT");

        // The weights stay in the mapped file: not copied when it is loaded, and not copied again into another order.
        options.AddSessionConfigEntry("session.use_memory_mapped_ort_model", "1");
        options.AddSessionConfigEntry("session.use_ort_model_bytes_for_initializers", "1");
        options.AddSessionConfigEntry("session.disable_prepacking", "1");
        return new InferenceSession(path, options);
    }
}
