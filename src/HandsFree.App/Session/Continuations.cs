using HandsFree.Language.Automata;
using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using HandsFree.Speech;

namespace HandsFree.App.Session;

/// <summary>Whether what was said may go on: "one hundred" may, "yes" may not. It chooses between the endpointer's two time-outs.</summary>
internal static class Continuations
{
    /// <summary>What may at most speak for a longer sentence where an answer counts as complete.</summary>
    private const double Least = 0.1;

    /// <summary>Too little to be looked at: a hearing may list a hundred such.</summary>
    private const double Negligible = 0.001;

    /// <summary>Whether an answer is complete: the likeliest sentence can't go on, and what could (another one that was possible, or what the
    /// search left out) is not likely. "Goodbye" can't go on, but where it may as well have been the beginning of a reading, more may come.</summary>
    public static bool IsComplete(Grammar grammar, Speech.Hearing hearing) =>
        hearing is { Outcome: HearingOutcome.Heard, Best: { } best }
        && !MayGoOn(grammar, best.Words)
        && hearing.Unfound + hearing.Candidates.Where(c => c.Probability > Negligible && MayGoOn(grammar, c.Words)).Sum(c => c.Probability) < Least;

    /// <summary>True where the grammar has a longer sentence that begins with these words.</summary>
    public static bool MayGoOn(Grammar grammar, string words)
    {
        HashSet<Configuration> reached = [grammar.Automaton.Start];
        foreach (string word in Matcher.WordsOf(words))
        {
            reached = [.. reached.SelectMany(c => grammar.Automaton.Next(c).Arcs).Where(a => a.Word == word).Select(a => a.Target)];
        }

        return reached.Any(c => !grammar.Automaton.Next(c).Arcs.IsEmpty);
    }
}
