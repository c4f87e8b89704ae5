namespace HandsFree.Pages.Charts;

/// <summary>How a reading is drawn.</summary>
public enum PointKind
{
    /// <summary>A dot.</summary>
    Taken,

    /// <summary>A ring: a rule asked for it.</summary>
    Recheck,

    /// <summary>A cross: it counts no more.</summary>
    CountsNoMore,
}
