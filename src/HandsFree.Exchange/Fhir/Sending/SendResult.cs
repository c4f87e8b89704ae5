namespace HandsFree.Exchange.Fhir.Sending;

/// <summary>What came of sending a bundle.</summary>
/// <param name="Error">Null where the receiver has it; else what is wrong and what to do, on one line.</param>
/// <param name="ChangedThere">What the receiver changed itself and was therefore not written over, a line each.</param>
public sealed record SendResult(string? Error, IReadOnlyList<string> ChangedThere);
