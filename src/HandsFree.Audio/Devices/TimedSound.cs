namespace HandsFree.Audio.Devices;

/// <summary>Captured sound with the times of its frames: where frames are missing the times jump, the samples don't.</summary>
/// <param name="samples">16 kHz mono, whole frames.</param>
/// <param name="times">Of the first sample of each frame, rising.</param>
public sealed class TimedSound(float[] samples, DateTimeOffset[] times)
{
    /// <summary>The samples.</summary>
    public ReadOnlySpan<float> Samples => samples;

    /// <summary>When a sample was captured.</summary>
    public DateTimeOffset TimeOf(int position) =>
        times[Math.Min(position / SoundFrame.Samples, times.Length - 1)] + SampleTime.Of(position % SoundFrame.Samples);

    /// <summary>The first sample of the frame in which a moment lies; of the first frame for one before it.</summary>
    public int PositionOf(DateTimeOffset at)
    {
        int found = Array.BinarySearch(times, at);
        return Math.Max(0, found >= 0 ? found : ~found - 1) * SoundFrame.Samples;
    }

    /// <summary>The time of the first sample after a moment that is as large as that; null where there is none.</summary>
    public DateTimeOffset? FirstSound(DateTimeOffset after, float size)
    {
        for (int i = PositionOf(after); i < samples.Length; i++)
        {
            if (Math.Abs(samples[i]) >= size && TimeOf(i) > after)
            {
                return TimeOf(i);
            }
        }

        return null;
    }
}
