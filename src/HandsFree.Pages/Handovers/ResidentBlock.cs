using HandsFree.Pages.Drawing;

namespace HandsFree.Pages.Handovers;

/// <summary>One resident in the list of everyone.</summary>
/// <param name="Place">Room and bed.</param>
/// <param name="Name">The resident's name.</param>
/// <param name="Marks">What is not in order, the gravest first; none where all is.</param>
/// <param name="Notes">What else the next shift must know, such as pain, oxygen, a note of the roster.</param>
/// <param name="Cells">One for each column of <see cref="UnitSheet.Columns"/>.</param>
public sealed record ResidentBlock(string Place, string Name, IReadOnlyList<Mark> Marks, string Notes, IReadOnlyList<SignCell> Cells);
