using System.Collections.Immutable;
using HandsFree.Language.Automata;
using HandsFree.Language.Grammars;
using HandsFree.Language.Meaning;

namespace HandsFree.Speech.Words;

/// <summary>The grammar's automaton made deterministic where it is walked, so that each sequence of words is one way through it and is
/// counted once.</summary>
internal sealed class SentenceAutomaton
{
    private readonly WordAutomaton words;
    private readonly Func<string, int?> place;
    private readonly Dictionary<ImmutableArray<Configuration>, SentenceState> states = new(SameConfigurations.Only);

    /// <summary>Of a grammar.</summary>
    /// <param name="grammar">The grammar.</param>
    /// <param name="place">A word's place in the network's rows; null for a word that it has not learned: no sentence with it is in the
    /// automaton.</param>
    internal SentenceAutomaton(Grammar grammar, Func<string, int?> place)
    {
        words = new(grammar);
        this.place = place;
        Start = Intern([words.Start]);
    }

    /// <summary>Before the first word.</summary>
    internal SentenceState Start { get; }

    /// <summary>How many of the grammar's configurations were unfolded so far.</summary>
    internal int Size => words.Size;

    /// <summary>The learned words that can follow, of some places; a place occurs once.</summary>
    internal IEnumerable<SentenceArc> Arcs(SentenceState state, IReadOnlyCollection<int> places)
    {
        Dictionary<int, SentenceArc> arcs = state.Arcs ??= ArcsOf(state);
        return places.Count > arcs.Count
            ? arcs.Values
            : places.Select(p => arcs.GetValueOrDefault(p)).OfType<SentenceArc>();
    }

    /// <summary>Whether any word can follow, learned or not.</summary>
    internal bool MayGoOn(SentenceState state) => state.Configurations.Any(c => !words.Next(c).Arcs.IsEmpty);

    /// <summary>The state that an arc leads to.</summary>
    internal SentenceState Target(SentenceArc arc) => arc.Target ??= Intern(arc.Configurations);

    /// <summary>What the sentence means if it ends in a state.</summary>
    internal SemanticValue[] Meanings(SentenceState state) => [.. state.Configurations.SelectMany(c => words.Next(c).Meanings).Distinct()];

    /// <summary>Words of one sound lead on together.</summary>
    private Dictionary<int, SentenceArc> ArcsOf(SentenceState state) => state.Configurations
        .SelectMany(c => words.Next(c).Arcs)
        .Select(arc => (Place: place(arc.Word), arc.Word, arc.Target))
        .Where(arc => arc.Place is not null)
        .GroupBy(arc => arc.Place!.Value)
        .ToDictionary(g => g.Key, g => new SentenceArc(g.Key, g.First().Word, [.. g.Select(a => a.Target).Distinct()]));

    private SentenceState Intern(ImmutableArray<Configuration> configurations)
    {
        if (!states.TryGetValue(configurations, out SentenceState? known))
        {
            known = new(configurations);
            states.Add(configurations, known);
        }

        return known;
    }

    /// <summary>The same configurations in the same order.</summary>
    private sealed class SameConfigurations : IEqualityComparer<ImmutableArray<Configuration>>
    {
        internal static SameConfigurations Only { get; } = new();

        public bool Equals(ImmutableArray<Configuration> a, ImmutableArray<Configuration> b) => a.SequenceEqual(b);

        public int GetHashCode(ImmutableArray<Configuration> set)
        {
            var hash = default(HashCode);
            foreach (Configuration c in set)
            {
                hash.Add(c);
            }

            return hash.ToHashCode();
        }
    }
}
