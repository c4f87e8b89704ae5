namespace HandsFree.Core.Rules;

/// <summary>A second measurement that comes before a report is final.</summary>
/// <param name="Rule">The rule that asks for it.</param>
/// <param name="Instruction">What to do, as a sentence to be spoken: rest, other arm, dry the forehead, count 60 seconds.</param>
/// <param name="After">How long to wait; zero for at once.</param>
public sealed record Recheck(string Rule, string Instruction, TimeSpan After);
