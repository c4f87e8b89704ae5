using System.Text.Json.Nodes;
using HandsFree.Benchmarks.Recordings;

namespace HandsFree.Benchmarks.Results;

/// <summary>One value that may have been said.</summary>
/// <param name="Meaning">Its meaning.</param>
/// <param name="Words">The likeliest words that say it.</param>
/// <param name="Probability">The engine's posterior, 0 to 1.</param>
/// <param name="Right">Whether it is what was meant.</param>
internal sealed record HeardCandidate(JsonNode? Meaning, string Words, double Probability, bool Right)
{
    /// <summary>Whether another run's candidate means the same.</summary>
    public bool SameAs(HeardCandidate? other) => other is not null && SameMeaning.Of(Meaning, other.Meaning);
}
