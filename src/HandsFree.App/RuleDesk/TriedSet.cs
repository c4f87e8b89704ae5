using HandsFree.Core.Rules;
using HandsFree.Core.Rules.Scores;

namespace HandsFree.App.RuleDesk;

/// <summary>Readings that were tried together, with the gravest of what would be decided.</summary>
/// <param name="Readings">In their order; one at least.</param>
/// <param name="News2">What the set gives to NEWS2; null where the home does not show it, and for who is not an adult.</param>
internal sealed record TriedSet(IReadOnlyList<TriedReading> Readings, News2Parameters? News2)
{
    /// <summary>The gravest decision in one word.</summary>
    public string Word => Readings.Select(r => r.Word).MaxBy(Rank)!;

    /// <summary>The readings that make it so.</summary>
    public IReadOnlyList<TriedReading> Makers => [.. Readings.Where(r => r.Word == Word)];

    /// <summary>Whether a recheck comes first for each of them: one that stands without makes it stand.</summary>
    public bool RecheckFirst => Makers.All(r => r.Decision.Recheck is not null);

    /// <summary>Whether one is a danger value.</summary>
    public bool Danger => Readings.Any(r => r.Decision.Danger);

    /// <summary>Every reason of the set once, the weightiest first.</summary>
    public IReadOnlyList<Reason> Reasons => [.. Readings.SelectMany(r => r.Decision.Reasons).DistinctBy(r => (r.Rule, r.Text)).OrderByDescending(r => r.Outcome)];

    private static int Rank(string word) => DecisionWord.FromMildToGrave.ToList().IndexOf(word);
}
