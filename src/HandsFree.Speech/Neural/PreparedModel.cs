using System.Runtime.InteropServices;
using System.Runtime.Intrinsics.X86;
using System.Security.Cryptography;
using System.Text;
using Microsoft.ML.OnnxRuntime;

namespace HandsFree.Speech.Neural;

/// <summary>The model as it is run. The distributed files hold int8 weights that the graph turns into floats in every run, which
/// costs four to seven times the time; and the decoder holds two copies of itself, for the first step and for the later ones. So
/// each part is made once, with int8 arithmetic on the stored weights, and kept in a cache folder, under a name made of the file's
/// SHA-256, the runtime's version, the processor and the version of the preparation.</summary>
/// <param name="cacheFolder">Where prepared files are kept; made when missing.</param>
internal sealed class PreparedModel(string cacheFolder)
{
    /// <summary>Counts up with every change to what is prepared.</summary>
    private const string Preparation = "3";

    /// <summary>The encoder.</summary>
    /// <param name="source">A file in ORT format.</param>
    /// <returns>Path of a file in ORT format that loads without further optimisation.</returns>
    public string Encoder(string source) => Of(source, "whole", "", null, _ => true);

    /// <summary>From the encoder's frames to the keys and values that the decoder looks at: a part of its branch for the first step.</summary>
    /// <inheritdoc cref="Encoder"/>
    public string Keys(string source) => Of(source, "keys", "else_branch", "encoder_hidden_states", o => o.Contains(".encoder."));

    /// <summary>One step of the decoder: its branch for later steps, which with an empty past does the first step too.</summary>
    /// <inheritdoc cref="Encoder"/>
    public string Step(string source) => Of(source, "step", "then_branch", null, o => !o.Contains(".encoder."));

    private string Of(string source, string part, string branch, string? shapes, Func<string, bool> isWanted)
    {
        string prepared = Path.Combine(cacheFolder, Key(source, part) + ".ort");
        if (File.Exists(prepared))
        {
            return prepared;
        }

        Directory.CreateDirectory(cacheFolder);
        string work = Path.Combine(cacheFolder, $".{Path.GetFileName(prepared)}.{Environment.ProcessId}");
        Directory.CreateDirectory(work);
        try
        {
            string plain = Path.Combine(work, "plain.onnx");
            string small = Path.Combine(work, "small.onnx");
            string optimised = Path.Combine(work, "optimised.ort");
            Convert(source, plain, GraphOptimizationLevel.ORT_DISABLE_ALL, "ORT", "ONNX");
            var graph = new OnnxGraph(File.ReadAllBytes(plain), branch);
            graph.KeepWeightsSmall();
            if (shapes is not null)
            {
                graph.TakeShapesFrom(shapes);
            }

            File.WriteAllBytes(small, graph.For(isWanted));
            Convert(small, optimised, GraphOptimizationLevel.ORT_ENABLE_ALL, "ONNX", "ORT");
            File.Move(optimised, prepared, overwrite: true);
        }
        finally
        {
            Directory.Delete(work, recursive: true);
        }

        return prepared;
    }

    private static void Convert(string from, string to, GraphOptimizationLevel level, string load, string save)
    {
        using var options = new SessionOptions { GraphOptimizationLevel = level, OptimizedModelFilePath = to, LogSeverityLevel = OrtLoggingLevel.ORT_LOGGING_LEVEL_ERROR };
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
