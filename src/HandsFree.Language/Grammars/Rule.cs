namespace HandsFree.Language.Grammars;

/// <summary>A named rule.</summary>
public sealed class Rule
{
    internal Rule(string grammar, string name, bool isPublic, Expansion body, SourcePosition at)
    {
        Grammar = grammar;
        Name = name;
        IsPublic = isPublic;
        Body = body;
        At = at;
    }

    /// <summary>The grammar that defines it.</summary>
    public string Grammar { get; }

    /// <summary>Its name without brackets.</summary>
    public string Name { get; }

    /// <summary>Whether it is public.</summary>
    public bool IsPublic { get; }

    /// <summary>What can be said.</summary>
    public Expansion Body { get; }

    /// <summary>Where it is defined.</summary>
    public SourcePosition At { get; }

    /// <summary>Sentences that its documentation comment gives as <c>@example</c>, lower case; none where it gives none.</summary>
    public IReadOnlyList<string> Examples { get; internal init; } = [];

    /// <summary>Names of rules whose values the rule's own tags use.</summary>
    internal HashSet<string> Used { get; } = [];

    /// <summary>Those of them with whose values the tags calculate.</summary>
    internal HashSet<string> Computed { get; } = [];
}
