namespace HandsFree.Benchmarks.Dictations.Saying;

/// <summary>A reading and the sentence that says it.</summary>
/// <param name="Value">What it says.</param>
/// <param name="Sentence">The words.</param>
/// <param name="Counted">The number in it that was counted; null where the number is the value.</param>
internal sealed record SpokenReading(Measured Value, string Sentence, int? Counted = null);
