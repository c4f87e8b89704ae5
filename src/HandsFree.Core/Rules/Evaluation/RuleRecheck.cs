namespace HandsFree.Core.Rules.Evaluation;

/// <summary>The recheck that a rule asks for.</summary>
/// <param name="Instruction">Which instruction.</param>
/// <param name="Times">How many times at the most: 1 or 2.</param>
/// <param name="UnlessCounted60">Not asked for where the value was already counted for 60 seconds.</param>
/// <param name="WaitForRest">The wait is what is left up to the rule's own threshold in minutes.</param>
internal sealed record RuleRecheck(RecheckInstruction Instruction, int Times, bool UnlessCounted60, bool WaitForRest);
