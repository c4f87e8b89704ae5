namespace HandsFree.Core.Dialogue;

/// <summary>What one event leads to.</summary>
/// <param name="State">The state from now on.</param>
/// <param name="Effects">What is to be done, in order; none where the event is ignored.</param>
public sealed record DialogueStep(DialogueState State, IReadOnlyList<Effect> Effects);
