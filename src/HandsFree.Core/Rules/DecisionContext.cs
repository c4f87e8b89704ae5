using HandsFree.Core.Observations;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Rules;

/// <summary>What a decision may look at beside the reading itself.</summary>
/// <param name="Resident">The identified resident.</param>
/// <param name="Earlier">Readings confirmed earlier for this resident, oldest first, this set's included.</param>
/// <param name="RechecksDone">How many rechecks of this value were already asked for in this round; at most two are.</param>
/// <param name="At">When the reading was measured.</param>
/// <param name="Symptoms">Symptoms that were said, of <see cref="Rules.Symptoms.All"/>.</param>
public sealed record DecisionContext(
    Resident Resident,
    IReadOnlyList<PastReading> Earlier,
    int RechecksDone,
    DateTimeOffset At,
    IReadOnlySet<string> Symptoms);
