namespace HandsFree.Core.Dialogue.Recovery;

/// <summary>A batch that the dialogue gave to the journal without being told what became of it.</summary>
/// <param name="Record">The batch.</param>
/// <param name="IsWritten">Whether it is in the journal; else it is to be written.</param>
public sealed record UnansweredBatch(Effect.Record Record, bool IsWritten);
