using System.Runtime.InteropServices;
using System.Runtime.Intrinsics.X86;
using System.Security.Cryptography;
using System.Text;
using Microsoft.ML.OnnxRuntime;

namespace HandsFree.Speech.Neural;

/// <summary>The model as it is run. The distributed files hold int8 weights that the graph turns into floats in every run, which
/// costs four to seven times the time; so each file is folded once and kept in a cache folder, under a name made of the file's
/// SHA-256, the runtime's version and the processor.</summary>
/// <param name="cacheFolder">Where prepared files are kept; made when missing.</param>
internal sealed class PreparedModel(string cacheFolder)
{
    /// <summary>The prepared file of one model file; made now if it isn't there.</summary>
    /// <param name="source">A file in ORT format.</param>
    /// <returns>Path of a file in ORT format that loads without further optimisation.</returns>
    public string Of(string source)
    {
        string prepared = Path.Combine(cacheFolder, Key(source) + ".ort");
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
            string named = Path.Combine(work, "named.onnx");
            string folded = Path.Combine(work, "folded.ort");
            Convert(source, plain, GraphOptimizationLevel.ORT_DISABLE_ALL, "ORT", "ONNX");
            using (FileStream output = File.Create(named))
            {
                OnnxBranchNames.Rewrite(File.ReadAllBytes(plain), output);
            }

            Convert(named, folded, GraphOptimizationLevel.ORT_ENABLE_ALL, "ONNX", "ORT");
            File.Move(folded, prepared, overwrite: true);
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

    private static string Key(string source)
    {
        using FileStream stream = File.OpenRead(source);
        string content = System.Convert.ToHexStringLower(SHA256.HashData(stream));
        string runtime = typeof(InferenceSession).Assembly.GetName().Version!.ToString();
        string machine = $"{RuntimeInformation.OSArchitecture} {Avx2.IsSupported} {Avx512F.IsSupported} {Avx512Vbmi.IsSupported}";
        string key = System.Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(content + runtime + machine)));
        return $"{Path.GetFileNameWithoutExtension(source)}-{key[..16]}";
    }
}
