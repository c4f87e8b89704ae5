namespace HandsFree.Core.Residents;

/// <summary>How often something is due.</summary>
public enum Frequency
{
    /// <summary>Once in every shift.</summary>
    EveryShift,

    /// <summary>Once a day.</summary>
    Daily,

    /// <summary>Once a week.</summary>
    Weekly,

    /// <summary>Once a month, as weights are.</summary>
    Monthly,
}
