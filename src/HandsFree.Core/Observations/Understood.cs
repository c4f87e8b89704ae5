using HandsFree.Core.Quantities;

namespace HandsFree.Core.Observations;

/// <summary>The second stage: a hearing that is a reading.</summary>
/// <param name="Heard">What was heard.</param>
/// <param name="Reading">What it means.</param>
/// <param name="Corrects">The value that this one replaced in one breath ("no, eighty-two"), or null.</param>
public sealed record Understood(Heard Heard, Reading Reading, Quantity? Corrects = null);
