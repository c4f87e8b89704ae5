namespace HandsFree.Core.Rules;

/// <summary>How far the source of a rule was checked.</summary>
public enum RuleMark
{
    /// <summary>Read in a published source.</summary>
    Published,

    /// <summary>Stated from memory, to be verified before it is relied on.</summary>
    FromMemory,

    /// <summary>Common practice, no source; or arithmetic.</summary>
    CommonPractice,
}
