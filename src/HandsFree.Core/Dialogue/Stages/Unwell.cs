using HandsFree.Core.Observations;

namespace HandsFree.Core.Dialogue;

/// <summary>"Dizzy", "fell" or "chest pain" that waits for its yes.</summary>
/// <param name="Rule">What it is reported by.</param>
/// <param name="Heard">What was heard.</param>
/// <param name="Before">Where it goes on after a no.</param>
internal sealed record Unwell(string Rule, Heard Heard, Stage Before);
