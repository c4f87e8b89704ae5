namespace HandsFree.Benchmarks.Dictations.Counting;

/// <summary>One dictation's result, as the JSON file keeps it.</summary>
internal sealed record DictationRow
{
    /// <summary>Share of wrong read-backs that the aide missed.</summary>
    public required double MissRate { get; init; }

    /// <summary>Number of the visit; with the seed it repeats the visit.</summary>
    public required int Visit { get; init; }

    /// <summary>Number of the dictation in its visit, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>The aide's voice.</summary>
    public required string Voice { get; init; }

    /// <summary>What she said first.</summary>
    public required string Said { get; init; }

    /// <summary>What she meant.</summary>
    public required string Truth { get; init; }

    /// <summary>The sign.</summary>
    public required string Sign { get; init; }

    /// <summary>How it ended.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>What was saved meanwhile.</summary>
    public required IReadOnlyList<string> Saved { get; init; }

    /// <summary>Things that the aide had to do although nothing of her own doing called for it.</summary>
    public required int Again { get; init; }

    /// <summary>The program wanted this value said twice.</summary>
    public required bool SaidTwiceAsPlanned { get; init; }

    /// <summary>She, the resident or a cough got in the way.</summary>
    public required bool Disturbed { get; init; }

    /// <summary>A second measurement.</summary>
    public required bool Recheck { get; init; }

    /// <summary>Counted with the program's tones.</summary>
    public required bool Counted { get; init; }

    /// <summary>Refused by the resident: not taken is the right outcome.</summary>
    public required bool Refused { get; init; }

    /// <summary>Texts that the program said.</summary>
    public required int Prompts { get; init; }

    /// <summary>Different wrong read-backs.</summary>
    public required int WrongReadBacks { get; init; }

    /// <summary>Of these, missed.</summary>
    public required int Missed { get; init; }

    /// <summary>From the first word to the end of "saved", seconds of the room.</summary>
    public required double Seconds { get; init; }

    /// <summary>Of these the aide was heard.</summary>
    public required double AideSeconds { get; init; }

    /// <summary>Of these the program was heard.</summary>
    public required double ProgramSeconds { get; init; }

    /// <summary>The whole exchange, where something was wrong, not saved or said again.</summary>
    public IReadOnlyList<string>? Exchange { get; init; }

    /// <summary>Saved right, and nobody had to say anything for want of being understood.</summary>
    public bool FirstTry => Verdict == Verdict.Right && Again == 0 && WrongReadBacks == 0;
}
