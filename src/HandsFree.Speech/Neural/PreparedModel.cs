using System.Runtime.InteropServices;
using System.Runtime.Intrinsics.X86;
using System.Security.Cryptography;
using System.Text;
using HandsFree.Audio.Runtime;
using Microsoft.ML.OnnxRuntime;

namespace HandsFree.Speech.Neural;

/// <summary>The model as it is run. The distributed files hold int8 weights that the graph turns into floats in every run, which
/// costs four to seven times the time; and the decoder holds two copies of itself, for the first step and for the later ones. So
/// each part is made once and kept in a cache folder, under a name made of the file's SHA-256, the runtime's version, the processor
/// and the version of the preparation. The encoder runs once an utterance and keeps its int8 weights; a step's weights are folded
/// into floats, but for the table of tokens, which <see cref="TokenTable"/> multiplies as it is stored.</summary>
/// <param name="cacheFolder">Where prepared files are kept; made when missing.</param>
internal sealed class PreparedModel(string cacheFolder)
{
    /// <summary>The output of a step that the table of tokens turns into logits.</summary>
    public const string LastState = "last_state";

    /// <summary>Counts up with every change to what is prepared.</summary>
    private const string Preparation = "4";

    /// <summary>The encoder.</summary>
    /// <param name="source">A file in ORT format.</param>
    /// <returns>Path of a file in ORT format that loads without further optimisation.</returns>
    public string Encoder(string source) => Of(source, "whole", ".ort", work => Run(work, source, "", graph =>
    {
        graph.UnfoldWhenRun();
        return graph.For(_ => true);
    }));

    /// <summary>From the encoder's frames to the keys and values that the decoder looks at: a part of its branch for the first step.</summary>
    /// <inheritdoc cref="Encoder"/>
    public string Keys(string source) => Of(source, "keys", ".ort", work => Run(work, source, "else_branch", graph =>
    {
        graph.TakeShapesFrom("encoder_hidden_states");
        return graph.For(o => o.Contains(".encoder.", StringComparison.Ordinal));
    }));

    /// <summary>One step of the decoder up to its last state: its branch for later steps, which with an empty past does the first too.</summary>
    /// <inheritdoc cref="Encoder"/>
    public string Step(string source) => Of(source, "step", ".ort", work => Run(work, source, "then_branch", graph =>
    {
        graph.CutLastProduct("logits", LastState);
        graph.LookUpBeforeUnfolding();
        return graph.For(o => !o.Contains(".encoder.", StringComparison.Ordinal));
    }));

    /// <summary>The table of tokens that the last state is multiplied with.</summary>
    /// <param name="source">The decoder's file in ORT format.</param>
    /// <returns>Path of a file for <see cref="TokenTable"/>.</returns>
    public string Table(string source) => Of(source, "table", ".bin", work =>
    {
        OnnxWeight table = Plain(work, source, "then_branch").CutLastProduct("logits", LastState);
        string file = Path.Combine(work, "table.bin");
        TokenTable.Write(file, table.Values.Raw.Span, table.Scale.Single, table.Offset.Single);
        return file;
    });

    private string Of(string source, string part, string extension, Func<string, string> make)
    {
        string prepared = Path.Combine(cacheFolder, Key(source, part) + extension);
        if (File.Exists(prepared))
        {
            return prepared;
        }

        Directory.CreateDirectory(cacheFolder);
        string work = Path.Combine(cacheFolder, $".{Path.GetFileName(prepared)}.{Environment.ProcessId}");
        Directory.CreateDirectory(work);
        try
        {
            File.Move(make(work), prepared, overwrite: true);
        }
        finally
        {
            Directory.Delete(work, recursive: true);
        }

        return prepared;
    }

    private static OnnxGraph Plain(string work, string source, string branch)
    {
        string plain = Path.Combine(work, "plain.onnx");
        Convert(source, plain, GraphOptimizationLevel.ORT_DISABLE_ALL, "ORT", "ONNX");
        return new(File.ReadAllBytes(plain), branch);
    }

    private static string Run(string work, string source, string branch, Func<OnnxGraph, byte[]> change)
    {
        string changed = Path.Combine(work, "changed.onnx");
        string optimised = Path.Combine(work, "optimised.ort");
        File.WriteAllBytes(changed, change(Plain(work, source, branch)));
        Convert(changed, optimised, GraphOptimizationLevel.ORT_ENABLE_ALL, "ONNX", "ORT");
        return optimised;
    }

    private static void Convert(string from, string to, GraphOptimizationLevel level, string load, string save)
    {
        using SessionOptions options = SilentRuntime.Options();
        options.GraphOptimizationLevel = level;
        options.OptimizedModelFilePath = to;
        options.LogSeverityLevel = OrtLoggingLevel.ORT_LOGGING_LEVEL_ERROR;
        options.AddSessionConfigEntry("session.load_model_format", load);
        options.AddSessionConfigEntry("session.save_model_format", save);
        using var session = new InferenceSession(from, options);
    }

    private static string Key(string source, string part)
    {
        using FileStream stream = File.OpenRead(source);
        string content = System.Convert.ToHexStringLower(SHA256.HashData(stream));
        string runtime = typeof(InferenceSession).Assembly.GetName().Version!.ToString();
        string machine = $"{RuntimeInformation.OSArchitecture} {Avx2.IsSupported} {Avx512F.IsSupported} {Avx512Vbmi.IsSupported}";
        string key = System.Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(content + runtime + machine + Preparation)));
        return $"{Path.GetFileNameWithoutExtension(source)}-{part}-{key[..16]}";
    }
}
