using HandsFree.Audio.Endpointing;
using HandsFree.Audio.Noise;
using HandsFree.Audio.Tests.Signals;
using Microsoft.ML.OnnxRuntime;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Endpointing;

public sealed class SileroWindowTests
{
    private const int Context = 64;
    private const int Frame = ISpeechDetector.FrameSamples;

    [Fact]
    public void The_model_gets_the_64_samples_before_each_frame_and_its_own_state_back_after_400_ms_of_quiet()
    {
        float[] sound = [.. PinkNoise.Make(6 * Frame, 1, -40), .. Signal.Vowel(0.512), .. PinkNoise.Make(4 * Frame, 2, -40)];
        using SileroSpeechDetector detector = new(Detectors.SileroModel);

        float[] probabilities = [.. sound.Chunk(Frame).Select(frame => detector.Probability(frame))];

        float[] expected = ByHand([.. new float[12 * Frame], .. sound])[12..];
        expected.Max().ShouldBeGreaterThan(expected.Min() + 0.01f);
        for (int i = 0; i < expected.Length; i++)
        {
            probabilities[i].ShouldBe(expected[i], 1e-5f);
        }
    }

    private static float[] ByHand(float[] sound)
    {
        using InferenceSession session = new(Detectors.SileroModel);
        float[] padded = [.. new float[Context], .. sound];
        float[] state = new float[256];
        float[] probabilities = new float[sound.Length / Frame];
        using RunOptions run = new();
        for (int i = 0; i < probabilities.Length; i++)
        {
            using OrtValue input = OrtValue.CreateTensorValueFromMemory(padded[(i * Frame)..((i * Frame) + Context + Frame)], [1, Context + Frame]);
            using OrtValue before = OrtValue.CreateTensorValueFromMemory(state, [2, 1, 128]);
            using OrtValue rate = OrtValue.CreateTensorValueFromMemory(new long[] { 16_000 }, []);
            using IDisposableReadOnlyCollection<OrtValue> outputs =
                session.Run(run, ["input", "state", "sr"], [input, before, rate], ["output", "stateN"]);
            probabilities[i] = outputs[0].GetTensorDataAsSpan<float>()[0];
            state = outputs[1].GetTensorDataAsSpan<float>().ToArray();
        }

        return probabilities;
    }
}
