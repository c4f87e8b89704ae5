using HandsFree.Audio;
using HandsFree.Audio.Devices;

namespace HandsFree.Benchmarks.Live;

/// <summary>A recording with the times of its frames.</summary>
/// <param name="Samples">16 kHz mono.</param>
/// <param name="Times">Of the first sample of each frame, rising.</param>
internal sealed record Recording(float[] Samples, DateTimeOffset[] Times)
{
    /// <summary>When a sample was played.</summary>
    public DateTimeOffset TimeOf(int position) =>
        Times[Math.Min(position / SoundFrame.Samples, Times.Length - 1)] + SampleTime.Of(position % SoundFrame.Samples);

    /// <summary>The first sample of the frame in which a moment lies.</summary>
    public int PositionOf(DateTimeOffset at)
    {
        int found = Array.BinarySearch(Times, at);
        return Math.Max(0, found >= 0 ? found : ~found - 1) * SoundFrame.Samples;
    }

    /// <summary>The time of the first sample after a moment that is as large as that; null where there is none.</summary>
    public DateTimeOffset? FirstSound(DateTimeOffset after, float size)
    {
        for (int i = PositionOf(after); i < Samples.Length; i++)
        {
            if (Math.Abs(Samples[i]) >= size && TimeOf(i) > after)
            {
                return TimeOf(i);
            }
        }

        return null;
    }
}
