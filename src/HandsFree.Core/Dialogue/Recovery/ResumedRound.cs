namespace HandsFree.Core.Dialogue.Recovery;

/// <summary>A round that was told again: its state, and what was still under way.</summary>
/// <param name="State">As it was after the last thing that is known to have been told.</param>
/// <param name="Since">When that was.</param>
/// <param name="Unanswered">Batches whose answer the dialogue was not told.</param>
/// <param name="Timers">When each timer that runs ends, by its name.</param>
public sealed record ResumedRound(
    DialogueState State, DateTimeOffset Since, IReadOnlyList<UnansweredBatch> Unanswered, IReadOnlyDictionary<string, DateTimeOffset> Timers);
