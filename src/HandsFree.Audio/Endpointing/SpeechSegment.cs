using HandsFree.Audio.Levels;

namespace HandsFree.Audio.Endpointing;

/// <summary>A piece of speech with the quiet around it, ready for a recogniser. Positions count samples at 16 kHz from the stream's start.</summary>
/// <param name="Samples">The speech with its padding, in [-1, 1].</param>
/// <param name="Position">Position of the first of the samples; negative where zeros stand before the stream's start.</param>
/// <param name="SpeechStart">Position where the speech proper begins.</param>
/// <param name="SpeechEnd">Position just after the speech proper.</param>
/// <param name="SpeechTime">Time in which speech was detected: from start to end without the pauses.</param>
/// <param name="Level">Level between start and end: peak and clipping of all samples, RMS without the pauses.</param>
/// <param name="End">Why it ended.</param>
public sealed record SpeechSegment(
    float[] Samples, long Position, long SpeechStart, long SpeechEnd, TimeSpan SpeechTime, Level Level, SegmentEnd End)
{
    /// <summary>Time from the start to the end of the speech proper, pauses included.</summary>
    public TimeSpan Duration => SampleTime.Of(SpeechEnd - SpeechStart);
}
