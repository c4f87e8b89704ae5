namespace HandsFree.Core.Rules.Evaluation;

/// <summary>On which side of its threshold a rule speaks.</summary>
internal enum Side
{
    /// <summary>Strictly above.</summary>
    Above,

    /// <summary>The threshold included.</summary>
    AtLeast,

    /// <summary>Strictly below.</summary>
    Below,

    /// <summary>The threshold included.</summary>
    AtMost,
}
