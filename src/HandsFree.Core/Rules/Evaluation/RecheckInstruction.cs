namespace HandsFree.Core.Rules.Evaluation;

/// <summary>What to do before measuring again, as it is spoken.</summary>
internal sealed record RecheckInstruction(string Id, string Say, TimeSpan After, string Source, RuleMark Mark);
