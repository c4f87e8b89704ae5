using HandsFree.Core.Quantities;
using HandsFree.Core.Rules;

namespace HandsFree.Core.Dialogue;

/// <summary>A recheck that has been asked for and not been done.</summary>
/// <param name="Sign">Which vital sign.</param>
/// <param name="Instruction">What to do.</param>
/// <param name="Decision">What the rules said of the reading that raised the doubt.</param>
/// <param name="DueAt">From when it can be done.</param>
internal sealed record WaitingRecheck(VitalSign Sign, string Instruction, Decision Decision, DateTimeOffset DueAt);
