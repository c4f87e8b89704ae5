namespace HandsFree.Core.Dialogue;

/// <summary>What was in hand when the round was cut off, until identity is asked again.</summary>
/// <param name="Set">The resident's set; null where identity was being asked.</param>
/// <param name="Stage">The stage.</param>
internal sealed record Suspended(ResidentSet? Set, Stage Stage);
