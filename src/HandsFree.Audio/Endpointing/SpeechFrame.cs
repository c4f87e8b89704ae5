namespace HandsFree.Audio.Endpointing;

/// <summary>What every detector asks of a frame.</summary>
internal static class SpeechFrame
{
    public static void Require(ReadOnlySpan<float> frame)
    {
        if (frame.Length != ISpeechDetector.FrameSamples)
        {
            throw new ArgumentException($"A frame has {ISpeechDetector.FrameSamples} samples, this one {frame.Length}.", nameof(frame));
        }
    }
}
