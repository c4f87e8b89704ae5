namespace HandsFree.Core.Dialogue;

/// <summary>How long is still to wait, in spoken words.</summary>
internal static class WaitingTime
{
    /// <summary>"one minute", "four minutes", "two hours": rounded up, so that nobody comes too early.</summary>
    public static string Words(TimeSpan time)
    {
        decimal minutes = (decimal)Math.Ceiling(time.TotalMinutes);
        return minutes <= 1 ? "one minute"
            : minutes <= 90 ? $"{DigitWords.Of(minutes)} minutes"
            : $"{DigitWords.Of(Math.Ceiling(minutes / 60))} hours";
    }
}
