namespace HandsFree.Benchmarks.Dictations.Saying;

/// <summary>A reading and the sentence that says it.</summary>
internal sealed record SpokenReading(Measured Value, string Sentence);
