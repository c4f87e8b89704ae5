using System.Text.Json.Serialization;

namespace HandsFree.Benchmarks.Dictations.Counting;

/// <summary>How a dictation ended.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<Verdict>))]
internal enum Verdict
{
    /// <summary>What was meant is in the journal.</summary>
    Right,

    /// <summary>Something else is in the journal.</summary>
    Wrong,

    /// <summary>Nothing is.</summary>
    NotSaved,
}
