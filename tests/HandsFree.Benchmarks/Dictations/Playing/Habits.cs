namespace HandsFree.Benchmarks.Dictations.Playing;

/// <summary>How an aide behaves. The shares are made up (no source), high enough that everything happens in a run of some hundred
/// dictations; first-try capture is counted apart where she herself was not straight.</summary>
internal sealed record Habits
{
    /// <summary>Share of wrong read-backs that she misses.</summary>
    public double MissRate { get; init; }

    /// <summary>She talks to the resident before a reading.</summary>
    public double ChatBefore { get; init; } = 0.04;

    /// <summary>She guesses first; refused, she says the reading.</summary>
    public double GuessBefore { get; init; } = 0.03;

    /// <summary>She coughs before a reading.</summary>
    public double CoughBefore { get; init; } = 0.02;

    /// <summary>She is interrupted, says "stop" in place of an answer, and comes back.</summary>
    public double Stop { get; init; } = 0.01;

    /// <summary>She says nothing where an answer is awaited.</summary>
    public double Silent { get; init; } = 0.02;

    /// <summary>She talks to the resident in place of an answer.</summary>
    public double ChatInstead { get; init; } = 0.015;

    /// <summary>She coughs in place of an answer.</summary>
    public double CoughInstead { get; init; } = 0.01;

    /// <summary>The resident says something in place of her answer, a yes or a no among it.</summary>
    public double ResidentInstead { get; init; } = 0.015;

    /// <summary>A resident's speech at the aide's microphone, below her own, dB.</summary>
    public double ResidentDecibels { get; init; } = -14;

    /// <summary>She corrects a wrong number in one breath; else she says no.</summary>
    public double CorrectInOneBreath { get; init; } = 0.6;

    /// <summary>Asked to say the number again after a wrong read-back, she does as she is asked and says her number; else she says
    /// "cancel" and begins anew. The first has the same mishearing twice saved.</summary>
    public double SaysOverWrongReadBack { get; init; } = 0.5;

    /// <summary>A pulse is counted with the program's tones.</summary>
    public double CountWithTones { get; init; } = 0.04;

    /// <summary>A reading is refused by the resident instead.</summary>
    public double Refused { get; init; } = 0.02;

    /// <summary>Weight and pain are taken beside the five of every set.</summary>
    public double Extra { get; init; } = 0.15;

    /// <summary>She answers a question about a symptom with yes.</summary>
    public double Symptom { get; init; } = 0.2;

    /// <summary>Nothing but readings and straight answers.</summary>
    public Habits Straight() => this with
    {
        ChatBefore = 0,
        GuessBefore = 0,
        CoughBefore = 0,
        Stop = 0,
        Silent = 0,
        ChatInstead = 0,
        CoughInstead = 0,
        ResidentInstead = 0,
        Refused = 0,
    };
}
