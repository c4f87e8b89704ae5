using HandsFree.Core.Observations;

namespace HandsFree.Core.Dialogue;

/// <summary>A count that was said and is read back later.</summary>
/// <param name="Understood">What it makes.</param>
/// <param name="Said">How it was said.</param>
internal sealed record HeldCount(Understood Understood, DialogueEvent.Utterance Said);
