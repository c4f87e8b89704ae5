using HandsFree.Audio.Runtime;
using Microsoft.ML.OnnxRuntime;

namespace HandsFree.Audio.Endpointing;

/// <summary>The best speech detector that a machine has.</summary>
/// <param name="Detector">To be disposed by whoever asked for it.</param>
/// <param name="WhyNotBetter">One line that says why it is not Silero, or null.</param>
public sealed record DetectorChoice(ISpeechDetector Detector, string? WhyNotBetter)
{
    /// <summary>SHA-256 of silero_vad_v6.onnx in the npm package @ricky0123/vad-web 0.0.31, lower-case hexadecimal.</summary>
    public const string SileroSha256 = "1a153a22f4509e292a94e67d6f9b85e8deb25b4988682b7e174c65279d8788e3";

    /// <summary>Silero where its model is there and loads, else the energy detector with the reason.</summary>
    /// <param name="sileroModel">Path of silero_vad_v6.onnx; null where none is configured.</param>
    public static DetectorChoice Best(string? sileroModel)
    {
        if (!File.Exists(sileroModel))
        {
            return new DetectorChoice(
                new EnergySpeechDetector(), $"speech is detected by its energy: {sileroModel ?? "the Silero model"} is not there");
        }

        if (KnownFile.WhyNot(sileroModel, SileroSha256) is { } unknown)
        {
            return new DetectorChoice(new EnergySpeechDetector(), $"speech is detected by its energy: {unknown}");
        }

        try
        {
            return new DetectorChoice(new SileroSpeechDetector(sileroModel), null);
        }
        catch (OnnxRuntimeException e)
        {
            return new DetectorChoice(new EnergySpeechDetector(), $"speech is detected by its energy: {sileroModel} does not load: {e.Message}");
        }
    }
}
