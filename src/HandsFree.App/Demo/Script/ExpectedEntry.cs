using System.Text.Json;

namespace HandsFree.App.Demo.Script;

/// <summary>Something that the journal must hold at the end.</summary>
internal sealed record ExpectedEntry
{
    /// <summary>"reading", "not taken", "report" or "recheck asked".</summary>
    public required string Kind { get; init; }

    /// <summary>The resident's id.</summary>
    public required string Resident { get; init; }

    /// <summary>The vital sign as in home.json; null for all that was open.</summary>
    public string? Sign { get; init; }

    /// <summary>A number, or two of a blood pressure.</summary>
    public JsonElement? Value { get; init; }

    /// <summary>What else was said about the way it was taken, and "recheck" for a second measurement.</summary>
    public IReadOnlyList<string> Qualifiers { get; init; } = [];

    /// <summary>Why it was not taken.</summary>
    public string? Reason { get; init; }

    /// <summary>"now" or "this shift".</summary>
    public string? Urgency { get; init; }
}
