namespace HandsFree.Core.Rules;

/// <summary>Where a rule has its authority from, in the order in which rules are asked.</summary>
public enum RuleAuthority
{
    /// <summary>Entry limits: what can't be, or is asked again before it is believed.</summary>
    Entry,

    /// <summary>Whether the method could give this value, and whether it should have been used.</summary>
    Method,

    /// <summary>A limit that a prescriber ordered for the resident.</summary>
    Ordered,

    /// <summary>The home's own file.</summary>
    Home,

    /// <summary>The defaults of the program.</summary>
    Default,
}
