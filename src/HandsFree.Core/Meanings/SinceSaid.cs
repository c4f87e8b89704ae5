namespace HandsFree.Core.Meanings;

/// <summary>From when on the handover is to count, as it was said.</summary>
public abstract record SinceSaid
{
    private SinceSaid()
    {
    }

    /// <summary>"Since this shift", "since the last shift".</summary>
    /// <param name="IsLast">The shift before the present one.</param>
    public sealed record Shift(bool IsLast) : SinceSaid;

    /// <summary>"Since three", "since fifteen hundred": the last time that a clock showed it.</summary>
    /// <param name="Hour">1 to 12 on a clock of twelve hours, else 0 to 23.</param>
    /// <param name="Minute">0 to 59.</param>
    /// <param name="OfTwelve">Whether the clock is one of twelve hours.</param>
    public sealed record Clock(int Hour, int Minute, bool OfTwelve) : SinceSaid;
}
