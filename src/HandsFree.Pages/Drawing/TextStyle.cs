namespace HandsFree.Pages.Drawing;

/// <summary>How a text is set.</summary>
/// <param name="Size">In points.</param>
/// <param name="Bold">Bold or regular.</param>
/// <param name="Ink">Of <see cref="Drawing.Ink"/>.</param>
/// <param name="Anchor">Which part of it stands at its place.</param>
public sealed record TextStyle(double Size, bool Bold = false, string Ink = Drawing.Ink.Black, Anchor Anchor = Anchor.Start);
