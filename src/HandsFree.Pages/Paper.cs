namespace HandsFree.Pages;

/// <summary>A size of paper, upright.</summary>
/// <param name="Name">Its name, as CSS names it too.</param>
/// <param name="Width">In points.</param>
/// <param name="Height">In points.</param>
public sealed record Paper(string Name, double Width, double Height)
{
    /// <summary>ISO 216: 210 by 297 mm.</summary>
    public static Paper A4 { get; } = new("A4", 210 / 25.4 * 72, 297 / 25.4 * 72);

    /// <summary>ANSI/ASME Y14.1 size A: 8.5 by 11 inches.</summary>
    public static Paper Letter { get; } = new("Letter", 8.5 * 72, 11 * 72);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Paper> All { get; } = [A4, Letter];

    /// <summary>The paper of a name, or null.</summary>
    public static Paper? Of(string name) => All.FirstOrDefault(p => string.Equals(p.Name, name, StringComparison.OrdinalIgnoreCase));
}
