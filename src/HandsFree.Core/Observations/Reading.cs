using HandsFree.Core.Quantities;

namespace HandsFree.Core.Observations;

/// <summary>A value and how it was taken.</summary>
/// <param name="Value">The quantity with its unit.</param>
/// <param name="How">What was said about the way it was taken.</param>
public sealed record Reading(Quantity Value, Circumstances How);
