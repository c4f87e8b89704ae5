namespace HandsFree.Core.Rules.Figures;

/// <summary>A number that a rule looks at.</summary>
/// <param name="Number">The number in the figure's unit; for a temperature in the spoken unit.</param>
/// <param name="Celsius">The number is in degrees Celsius, or a difference of them.</param>
internal readonly record struct Amount(decimal Number, bool Celsius = false);
