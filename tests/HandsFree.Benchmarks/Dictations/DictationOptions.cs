using HandsFree.Benchmarks.Dictations.Sound;

namespace HandsFree.Benchmarks.Dictations;

/// <summary>What a run was asked for.</summary>
internal sealed record DictationOptions
{
    /// <summary>Dictations at least; visits have five and more.</summary>
    public required int Count { get; init; }

    /// <summary>Of all that is drawn.</summary>
    public required int Seed { get; init; }

    /// <summary>The engine, or null for the best that is here.</summary>
    public string? Engine { get; init; }

    /// <summary>The noise, or null.</summary>
    public RoomNoise? Noise { get; init; }

    /// <summary>Shares of missed wrong read-backs; all are played.</summary>
    public required IReadOnlyList<double> MissRates { get; init; }

    /// <summary>Voices that are made; null for the usual ones.</summary>
    public IReadOnlyList<string>? Voices { get; init; }

    /// <summary>Folders of recordings; none for made voices alone.</summary>
    public required IReadOnlyList<string> Clips { get; init; }

    /// <summary>Readings for each sign and voice that can be drawn.</summary>
    public required int Material { get; init; }

    /// <summary>Where made voices and hearings are kept.</summary>
    public required string Cache { get; init; }

    /// <summary>Processes.</summary>
    public required int Processes { get; init; }

    /// <summary>This process plays the visits whose number leaves this rest when divided by <see cref="Processes"/>; null for the one
    /// that starts the others.</summary>
    public int? Part { get; init; }

    /// <summary>The file for the results.</summary>
    public required string Json { get; init; }

    /// <summary>Visits: each has five dictations or more.</summary>
    public int VisitCount => (Count + 4) / 5;
}
