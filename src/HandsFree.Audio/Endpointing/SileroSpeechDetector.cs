using HandsFree.Audio.Runtime;
using Microsoft.ML.OnnxRuntime;

namespace HandsFree.Audio.Endpointing;

/// <summary>Silero VAD, version 5 or 6 (MIT licence), run by ONNX Runtime on one thread: windows of 512 samples with the 64 before them in front.</summary>
public sealed class SileroSpeechDetector : ISpeechDetector
{
    private const int ContextSamples = 64;
    private const int StateValues = 2 * 128;

    /// <summary>Quiet that a stream is taken to begin after (0.4 s). Without it, speech that a recording begins with was found late or,
    /// whispered, not at all.</summary>
    private const int QuietFrames = 12;

    private static readonly string[] InputNames = ["input", "state", "sr"];
    private static readonly string[] OutputNames = ["output", "stateN"];

    private readonly float[] _input = new float[ContextSamples + ISpeechDetector.FrameSamples];
    private readonly float[] _state = new float[StateValues];
    private readonly float[] _newState = new float[StateValues];
    private readonly float[] _probability = new float[1];
    private readonly InferenceSession _session;
    private readonly RunOptions _run = new();
    private readonly OrtValue[] _inputs;
    private readonly OrtValue[] _outputs;
    private readonly float[] _stateAfterQuiet;

    /// <summary>Loads the model.</summary>
    /// <param name="modelPath">The file silero_vad_v6.onnx.</param>
    /// <exception cref="FileNotFoundException">There is no such file.</exception>
    /// <exception cref="OnnxRuntimeException">The file is no such model.</exception>
    public SileroSpeechDetector(string modelPath)
    {
        if (!File.Exists(modelPath))
        {
            throw new FileNotFoundException($"{modelPath}: no such file", modelPath);
        }

        using SessionOptions options = SilentRuntime.Options();
        options.IntraOpNumThreads = 1;
        options.InterOpNumThreads = 1;
        options.LogSeverityLevel = OrtLoggingLevel.ORT_LOGGING_LEVEL_ERROR;
        _session = new InferenceSession(modelPath, options);
        _inputs =
        [
            OrtValue.CreateTensorValueFromMemory(_input, [1, _input.Length]),
            OrtValue.CreateTensorValueFromMemory(_state, [2, 1, 128]),
            OrtValue.CreateTensorValueFromMemory(new long[] { AudioClip.SampleRate }, []),
        ];
        _outputs =
        [
            OrtValue.CreateTensorValueFromMemory(_probability, [1, 1]),
            OrtValue.CreateTensorValueFromMemory(_newState, [2, 1, 128]),
        ];
        _stateAfterQuiet = HearQuiet();
    }

    /// <inheritdoc/>
    public string Name => "silero";

    /// <inheritdoc/>
    public float Probability(ReadOnlySpan<float> frame)
    {
        SpeechFrame.Require(frame);
        frame.CopyTo(_input.AsSpan(ContextSamples));
        _session.Run(_run, InputNames, _inputs, OutputNames, _outputs);
        _newState.CopyTo(_state, 0);
        frame[^ContextSamples..].CopyTo(_input);
        return _probability[0];
    }

    /// <inheritdoc/>
    public void Reset()
    {
        Array.Clear(_input);
        _stateAfterQuiet.CopyTo(_state, 0);
    }

    /// <inheritdoc/>
    /// <remarks>The model does that by itself as it listens; hearing a recording twice was measured to be worse.</remarks>
    public void Accustom(ReadOnlySpan<float> recording) => Reset();

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (OrtValue value in _inputs.Concat(_outputs))
        {
            value.Dispose();
        }

        _run.Dispose();
        _session.Dispose();
    }

    private float[] HearQuiet()
    {
        float[] quiet = new float[ISpeechDetector.FrameSamples];
        for (int i = 0; i < QuietFrames; i++)
        {
            Probability(quiet);
        }

        return [.. _state];
    }
}
