using HandsFree.Language.Meaning;

namespace HandsFree.Speech.Neural;

/// <summary>A state of the automaton over written characters: all ways through the grammar that the text so far may be on.</summary>
/// <param name="items">The ways.</param>
internal sealed class WrittenNode(WrittenItem[] items)
{
    /// <summary>The ways.</summary>
    public WrittenItem[] Items { get; } = items;

    /// <summary>The characters that can follow, in order; null before it was asked.</summary>
    public char[]? Characters { get; set; }

    /// <summary>Where characters lead that were tried already; null for nowhere.</summary>
    public Dictionary<char, WrittenNode?> Next { get; } = [];

    /// <summary>What the text means if it ends here; null before it was asked.</summary>
    public SemanticValue[]? Endings { get; set; }

    /// <summary>The tokens that can follow; null before it was asked.</summary>
    public (int Token, WrittenNode Node)[]? Tokens { get; set; }
}
