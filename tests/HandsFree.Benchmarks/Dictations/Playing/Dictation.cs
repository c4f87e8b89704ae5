using HandsFree.Benchmarks.Dictations.Saying;

namespace HandsFree.Benchmarks.Dictations.Playing;

/// <summary>One reading on its way into the journal, as the aide lives it.</summary>
internal sealed class Dictation
{
    /// <summary>What she means; the truth.</summary>
    public required Measured Truth { get; init; }

    /// <summary>The sentence that says it; of a count with tones, the command that begins it.</summary>
    public required string Sentence { get; init; }

    /// <summary>The number that she counted; null where she says the value itself.</summary>
    public int? Counted { get; set; }

    /// <summary>She counts with the program's tones.</summary>
    public bool WithTones { get; init; }

    /// <summary>The number as she thinks of it: what she counted, where she counted.</summary>
    public Measured Number => Counted is { } counted ? new Measured(Truth.Sign, counted) : Truth;

    /// <summary>The reading is not taken, the resident refused.</summary>
    public bool Refused { get; init; }

    /// <summary>It is a second measurement that the program asked for.</summary>
    public bool Recheck { get; init; }

    /// <summary>She waits for the end of a rest before she measures.</summary>
    public bool AfterRest { get; set; }

    /// <summary>What was done about it so far.</summary>
    public List<Act> Acts { get; } = [];

    /// <summary>Questions about it that were answered.</summary>
    public HashSet<string> Answered { get; } = [];

    /// <summary>Read-backs that were wrong: by their text, whether she noticed.</summary>
    public Dictionary<string, bool> WrongReadBacks { get; } = [];

    /// <summary>What was done in place of the next answer; at most one disturbance before the reading and one instead of an answer.</summary>
    public bool DisturbedBefore { get; set; }

    /// <inheritdoc cref="DisturbedBefore"/>
    public bool DisturbedInstead { get; set; }

    /// <summary>She said the reading at least once.</summary>
    public bool WasSaid => Acts.Any(a => a.Kind == ActKind.Reading);

    /// <summary>She or somebody else was not straight.</summary>
    public bool Disturbed => Acts.Any(a => a.Kind == ActKind.Disturbance);
}
