namespace HandsFree.Core.Rules.Evaluation;

/// <summary>A test that looks at an earlier reading of the same sign and site.</summary>
/// <param name="AtLeast">How long ago at the least; keeps repeats at the bedside out.</param>
/// <param name="AtMost">How long ago at the most.</param>
internal sealed record EarlierWindow(TimeSpan AtLeast, TimeSpan AtMost);
