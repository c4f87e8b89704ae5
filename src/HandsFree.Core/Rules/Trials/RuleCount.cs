namespace HandsFree.Core.Rules.Trials;

/// <summary>How often one rule, or all of them, would have spoken.</summary>
/// <param name="Rechecks">Rechecks that would have been asked for.</param>
/// <param name="ReportsThisShift">Reports of this shift that would have been opened, after the recheck where one comes first.</param>
/// <param name="ReportsNow">The same at once.</param>
/// <param name="AskedAgain">Readings that would have been asked again.</param>
public sealed record RuleCount(int Rechecks, int ReportsThisShift, int ReportsNow, int AskedAgain)
{
    /// <summary>Nothing.</summary>
    public static RuleCount None { get; } = new(0, 0, 0, 0);

    /// <summary>The sum.</summary>
    public static RuleCount operator +(RuleCount a, RuleCount b) =>
        new(a.Rechecks + b.Rechecks, a.ReportsThisShift + b.ReportsThisShift, a.ReportsNow + b.ReportsNow, a.AskedAgain + b.AskedAgain);
}
