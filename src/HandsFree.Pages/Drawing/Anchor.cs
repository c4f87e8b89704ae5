namespace HandsFree.Pages.Drawing;

/// <summary>Which part of a text stands at the place that is named.</summary>
public enum Anchor
{
    /// <summary>Its beginning.</summary>
    Start,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its end.</summary>
    End,
}
