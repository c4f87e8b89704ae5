namespace HandsFree.Core.Rules.Scores;

/// <summary>What NEWS2 needs; a parameter that is null was not measured, and then there is no total.</summary>
/// <param name="Respirations">Per minute.</param>
/// <param name="OxygenSaturation">Percent.</param>
/// <param name="OnOxygen">Supplemental oxygen.</param>
/// <param name="Systolic">mm[Hg].</param>
/// <param name="Pulse">Per minute.</param>
/// <param name="Alert">Alert; false for new confusion, voice, pain or unresponsive.</param>
/// <param name="Celsius">Temperature in degrees Celsius; rounded half away from zero to a tenth before it is scored.</param>
/// <param name="Scale2">Oxygen scale 2: only where a target of 88 to 92 % was ordered for a known risk.</param>
public sealed record News2Parameters(
    int? Respirations,
    int? OxygenSaturation,
    bool? OnOxygen,
    int? Systolic,
    int? Pulse,
    bool? Alert,
    decimal? Celsius,
    bool Scale2 = false);
