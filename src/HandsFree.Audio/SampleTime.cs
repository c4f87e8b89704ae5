namespace HandsFree.Audio;

/// <summary>From samples at 16 kHz to time and back.</summary>
public static class SampleTime
{
    /// <summary>The time that a number of samples takes; exact, as 16,000 divides the ticks of a second.</summary>
    public static TimeSpan Of(long samples) => TimeSpan.FromTicks(samples * (TimeSpan.TicksPerSecond / AudioClip.SampleRate));

    /// <summary>The samples in a time, rounded to the nearest.</summary>
    public static int Samples(TimeSpan time) => checked((int)Math.Round(time.TotalSeconds * AudioClip.SampleRate));
}
