using System.Collections.Immutable;
using HandsFree.Language.Tags;

namespace HandsFree.Language.Grammars;

/// <summary>One node of a grammar's tree (JSGF 1.0, section 4: rule expansions). Compared by identity.</summary>
public abstract class Expansion
{
    private protected Expansion()
    {
    }

    /// <summary>This node and all below it, in the order of the text; a reference's rule is not entered.</summary>
    internal IEnumerable<Expansion> Nodes() => Below().SelectMany(p => p.Nodes()).Prepend(this);

    private ImmutableArray<Expansion> Below() => this switch
    {
        SequenceExpansion s => s.Parts,
        AlternativesExpansion a => a.Choices,
        RepeatExpansion r => [r.Body],
        _ => [],
    };
}

/// <summary>One word, lower case.</summary>
public sealed class WordExpansion(string word) : Expansion
{
    /// <summary>The word.</summary>
    public string Word { get; } = word;
}

/// <summary>One after the other.</summary>
public sealed class SequenceExpansion(ImmutableArray<Expansion> parts) : Expansion
{
    /// <summary>The parts in order; none for JSGF's NULL.</summary>
    public ImmutableArray<Expansion> Parts { get; } = parts;
}

/// <summary>One of several, with JSGF weights.</summary>
public sealed class AlternativesExpansion(ImmutableArray<Expansion> choices, ImmutableArray<double> weights) : Expansion
{
    /// <summary>The choices.</summary>
    public ImmutableArray<Expansion> Choices { get; } = choices;

    /// <summary>Their weights, 1 where none was written; above 0.</summary>
    public ImmutableArray<double> Weights { get; } = weights;
}

/// <summary>JSGF's [ ], * and +.</summary>
public sealed class RepeatExpansion(Expansion body, bool atLeastOnce, bool more) : Expansion
{
    /// <summary>What repeats.</summary>
    public Expansion Body { get; } = body;

    /// <summary>Whether it must be there once.</summary>
    public bool AtLeastOnce { get; } = atLeastOnce;

    /// <summary>Whether it may be there more than once.</summary>
    public bool More { get; } = more;
}

/// <summary>A reference to another rule.</summary>
public sealed class RuleExpansion(string name, SourcePosition at) : Expansion
{
    /// <summary>The rule's name as written, without brackets.</summary>
    public string Name { get; } = name;

    /// <summary>Where it stands.</summary>
    public SourcePosition At { get; } = at;

    /// <summary>The rule that it names; set when the grammar is linked.</summary>
    public Rule Target { get; internal set; } = null!;
}

/// <summary>A semantic tag.</summary>
public sealed class TagExpansion(TagProgram program, SourcePosition at = default) : Expansion
{
    /// <summary>Where it stands.</summary>
    public SourcePosition At { get; } = at;

    /// <summary>What it does.</summary>
    public TagProgram Program { get; } = program;
}
