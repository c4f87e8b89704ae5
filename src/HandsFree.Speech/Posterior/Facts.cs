namespace HandsFree.Speech.Posterior;

/// <summary>The names under which evidence and parameters know their numbers.</summary>
internal static class Facts
{
    /// <summary>Of a value: natural log weight of all its forms together, in the engine's own measure.</summary>
    public const string Score = "score";

    /// <summary>Of the utterance: always 1.</summary>
    public const string Bias = "bias";

    /// <summary>Of the utterance: log share of what was heard outside the grammar, not below -14.</summary>
    public const string Outside = "outside";
}
