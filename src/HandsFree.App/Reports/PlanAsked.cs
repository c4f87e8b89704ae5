using HandsFree.Core.Residents;

namespace HandsFree.App.Reports;

/// <summary>A plan as it was typed.</summary>
/// <param name="Value">What is limited.</param>
/// <param name="Least">In the home's unit, or null.</param>
/// <param name="Greatest">In the home's unit, or null.</param>
/// <param name="Until">When it ends.</param>
/// <param name="Text">What is to be done meanwhile.</param>
internal sealed record PlanAsked(LimitedValue Value, decimal? Least, decimal? Greatest, DateTimeOffset Until, string Text)
{
    /// <summary>Who ordered it, where that was said.</summary>
    public string? OrderedBy { get; init; }

    /// <summary>The limits as they are kept, or what is wrong with them.</summary>
    public (decimal? Least, decimal? Greatest, string? Wrong) Kept(RosterUnits units)
    {
        (decimal? least, string? wrongLeast) = Least is { } low ? units.Kept(Value, low) : (null, null);
        (decimal? greatest, string? wrongGreatest) = Greatest is { } high ? units.Kept(Value, high) : (null, null);
        string? wrong = true switch
        {
            _ when Least is null && Greatest is null => "the plan has no limit; give --least, --greatest, or both",
            _ when wrongLeast is not null => $"--least {wrongLeast}",
            _ when wrongGreatest is not null => $"--greatest {wrongGreatest}",
            _ when least > greatest => "--least is above --greatest",
            _ => null,
        };
        return (least, greatest, wrong);
    }
}
