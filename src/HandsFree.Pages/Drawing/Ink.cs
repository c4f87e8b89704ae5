namespace HandsFree.Pages.Drawing;

/// <summary>The inks of a page: black and greys alone, so that nothing is lost in black and white. Their contrast on white is checked by
/// the formula of WCAG 2.</summary>
public static class Ink
{
    /// <summary>Text and marks.</summary>
    public const string Black = "#111111";

    /// <summary>Text beside the values: times, what is usual. At least 7 to 1 on white.</summary>
    public const string Grey = "#474747";

    /// <summary>Lines of charts that carry something: limits, axes, points that count no more. At least 4.5 to 1 on white.</summary>
    public const string Line = "#6b6b6b";

    /// <summary>The band of what is usual; its edges are drawn with <see cref="Line"/>.</summary>
    public const string Band = "#e4e4e4";

    /// <summary>Rules between residents; carries nothing.</summary>
    public const string Rule = "#9a9a9a";

    /// <summary>Paper.</summary>
    public const string White = "#ffffff";
}
