namespace HandsFree.Speech.Posterior;

/// <summary>The names under which evidence and parameters know their numbers.</summary>
internal static class Facts
{
    /// <summary>Of a value: natural log weight of all its forms together, in the engine's own measure.</summary>
    public const string Score = "score";

    /// <summary>Of a value: its score times the utterance's <see cref="Noise"/>; in noise the same difference of scores says less.</summary>
    public const string ScoreInNoise = "score in noise";

    /// <summary>Of a value: seconds by which the speech is longer than the value's words can take.</summary>
    public const string TooLong = "too long";

    /// <summary>Of a value: how different its likeliest written form is from what was heard freely; 0 to 1.</summary>
    public const string Unlike = "unlike";

    /// <summary>Of the utterance: always 1.</summary>
    public const string Bias = "bias";

    /// <summary>Of the utterance: tens of dB by which the speech stands less than 30 dB above the noise.</summary>
    public const string Noise = "noise";

    /// <summary>Of the utterance: the score that a value which the search left out may have at most, not below -12.</summary>
    public const string LeftOut = "left out";

    /// <summary>Of the utterance: lead of the phone loop over the grammar, score for each frame.</summary>
    public const string Lead = "lead";

    /// <summary>Of the utterance: log share of what was heard outside the grammar, not below -14.</summary>
    public const string Outside = "outside";

    /// <summary>From dB of speech above noise to <see cref="Noise"/>.</summary>
    public static double NoiseOf(double speechToNoise) => Math.Max(0, 30 - speechToNoise) / 10;
}
