using HandsFree.Pages.Drawing;

namespace HandsFree.Pages.Handovers;

/// <summary>One thing that the next shift must know.</summary>
/// <param name="Mark">Its mark; the word stands beside it.</param>
/// <param name="Place">Room and bed.</param>
/// <param name="Name">The resident's name.</param>
/// <param name="When">Since when, in words.</param>
/// <param name="Lines">What it is, the first line the most.</param>
/// <param name="WriteIn">What can be filled in by pen, each before a line; none where nothing is to be.</param>
public sealed record SheetItem(Mark Mark, string Place, string Name, string When, IReadOnlyList<string> Lines, IReadOnlyList<string> WriteIn);
