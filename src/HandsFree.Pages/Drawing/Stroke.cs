namespace HandsFree.Pages.Drawing;

/// <summary>How a line is drawn.</summary>
/// <param name="Ink">Of <see cref="Drawing.Ink"/>.</param>
/// <param name="Width">In points.</param>
/// <param name="Dashed">Dashes of three widths with gaps of two.</param>
public sealed record Stroke(string Ink, double Width, bool Dashed = false);
