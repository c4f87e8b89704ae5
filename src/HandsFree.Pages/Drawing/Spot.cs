namespace HandsFree.Pages.Drawing;

/// <summary>A place on the paper.</summary>
/// <param name="X">Points (1/72 inch) from the left.</param>
/// <param name="Y">Points from the top.</param>
public readonly record struct Spot(double X, double Y);
