namespace HandsFree.Pages.Handovers;

/// <summary>A part of the sheet.</summary>
/// <param name="Heading">What it lists.</param>
/// <param name="Items">The gravest first.</param>
/// <param name="IfNone">What is said where there is nothing.</param>
public sealed record SheetSection(string Heading, IReadOnlyList<SheetItem> Items, string IfNone);
