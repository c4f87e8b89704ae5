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

    private NeuralModel(InferenceSession encoder, InferenceSession decoder, Vocabulary vocabulary)
    {
        Encoder = encoder;
        Decoder = decoder;
        Vocabulary = vocabulary;
    }

    /// <summary>input_values [1, samples] to last_hidden_state [1, frames, 416].</summary>
    public InferenceSession Encoder { get; }

    /// <summary>One token to the logits of the next.</summary>
    public InferenceSession Decoder { get; }

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
        string encoder = prepared.Of(Path.Combine(folder, Files[0]));
        string decoder = prepared.Of(Path.Combine(folder, Files[1]));
        Task<InferenceSession> loading = Task.Run(() => Open(encoder, threads));
        Vocabulary vocabulary = Vocabulary.Read(Path.Combine(folder, Files[2]));
        InferenceSession decoding = Open(decoder, threads);
        return new(loading.GetAwaiter().GetResult(), decoding, vocabulary);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Encoder.Dispose();
        Decoder.Dispose();
    }

    private static InferenceSession Open(string path, int threads)
    {
        using var options = new SessionOptions
        {
            IntraOpNumThreads = threads,
            InterOpNumThreads = 1,
            GraphOptimizationLevel = GraphOptimizationLevel.ORT_DISABLE_ALL,
            LogSeverityLevel = OrtLoggingLevel.ORT_LOGGING_LEVEL_ERROR,
        };
        options.AddSessionConfigEntry("session.load_model_format", "ORT");
        options.AddSessionConfigEntry("session.use_mmap", "1");
        return new InferenceSession(path, options);
    }
}
