using HandsFree.App.Hear;
using HandsFree.App.Session;
using HandsFree.Core.Meanings;
using HandsFree.Language.Automata;
using HandsFree.Language.Grammars;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Hear;

/// <summary>What sounds alike and means another thing is never awaited together, where the one of the two is done without a read-back: an
/// answer or a command. ("Now" was heard for "no" with a probability of 1.00 where both were awaited.) Values are read back.</summary>
public sealed class SoundAlikeTests
{
    /// <summary>Sentences of so many words are compared; longer ones differ in more.</summary>
    private const int Longest = 2;

    /// <summary>Looked at, and left: "done" needs a margin that other words don't, and names what is open before the resident is left; "one"
    /// is read back. Neither changes the record unheard.</summary>
    private static readonly string[] Known = ["done | one"];

    private static readonly GrammarShelf Shelf = new(Path.Combine(Shared.Repository, "grammars"));
    private static readonly ILookup<string, string[]> Sounds = File.ReadLines(Path.Combine(Shared.Repository, "tests/HandsFree.Scenarios/Hear/pronunciations.tsv"))
        .Where(line => !line.StartsWith('#')).Select(line => line.Split('\t')).ToLookup(cells => cells[0], cells => cells[1].Split(' '));

    private static readonly System.Collections.Concurrent.ConcurrentDictionary<string, string[][]> Found = new();

    private static Grammar[] Awaited => [.. new ListeningGrammars(Shelf).All()];

    [Fact]
    public void No_answer_and_no_command_is_one_sound_away_from_another_meaning_that_is_awaited_with_it()
    {
        SortedSet<string> alike = new(StringComparer.Ordinal);
        foreach (Grammar grammar in Awaited)
        {
            (string[] Words, Meaning Meaning)[] sentences = [.. Short(grammar)];
            foreach ((string[] words, Meaning meaning) in sentences.Where(s => s.Meaning is Meaning.Answer or Meaning.Command))
            {
                foreach ((string[] others, Meaning other) in sentences.Where(s => s.Meaning != meaning && Distance(words, s.Words) <= 1))
                {
                    string[] two = [string.Join(' ', words), string.Join(' ', others)];
                    alike.Add(string.Join(" | ", two.Order(StringComparer.Ordinal)));
                }
            }
        }

        alike.ShouldBe(Known);
    }

    [Fact]
    public void Where_a_word_may_follow_none_may_that_is_spoken_in_the_same_way()
    {
        SortedSet<string> alike = new(StringComparer.Ordinal);
        foreach ((Grammar grammar, Configuration place) in Awaited.SelectMany(grammar => Places(grammar).Select(place => (grammar, place))))
        {
            string[] words = [.. grammar.Automaton.Next(place).Arcs.Select(arc => arc.Word).Distinct().Order(StringComparer.Ordinal)];
            alike.UnionWith(words.SelectMany((one, i) => words.Skip(i + 1).Where(other => Distance([one], [other]) == 0).Select(other => $"{one} | {other}")));
        }

        // "Eighty to ninety" is a guess, which is refused whatever its numbers are.
        alike.ShouldBe(["to | two"]);
    }

    [Fact]
    public void Every_word_of_the_grammars_has_a_pronunciation_here() =>
        Awaited.SelectMany(Words).Distinct().Where(word => !Sounds.Contains(word)).ShouldBeEmpty();

    [Theory]
    [InlineData("now", "no", 1)]
    [InlineData("yes", "no", 3)]
    [InlineData("for", "four", 0)]
    [InlineData("stop", "top", 1)]
    public void Distances_are_sounds_that_are_put_in_left_out_or_changed(string one, string other, int distance) =>
        Levenshtein(Spoken(one), Spoken(other)).ShouldBe(distance);

    // Words that are in no grammar, by hand (CMU Pronouncing Dictionary, from memory).
    private static string[] Spoken(string word) => word switch
    {
        "now" => ["N", "AW"],
        "for" => ["F", "AO", "R"],
        "top" => ["T", "AA", "P"],
        _ => Sounds[word].First(),
    };

    private static IEnumerable<(string[] Words, Meaning Meaning)> Short(Grammar grammar)
    {
        Queue<(string[] Words, Configuration At)> open = new([([], grammar.Automaton.Start)]);
        while (open.TryDequeue(out var reached))
        {
            Moves moves = grammar.Automaton.Next(reached.At);
            foreach (Meaning meaning in moves.Meanings.Select(value => MeaningMap.From(value)).OfType<Meaning>())
            {
                yield return (reached.Words, meaning);
            }

            foreach (Arc arc in reached.Words.Length < Longest ? moves.Arcs : [])
            {
                open.Enqueue(([.. reached.Words, arc.Word], arc.Target));
            }
        }
    }

    private static IEnumerable<string> Words(Grammar grammar) =>
        Places(grammar).SelectMany(place => grammar.Automaton.Next(place).Arcs).Select(arc => arc.Word).Distinct();

    // Numbers make the automaton wide; every kind of place comes early.
    private static HashSet<Configuration> Places(Grammar grammar)
    {
        HashSet<Configuration> seen = [grammar.Automaton.Start];
        Queue<Configuration> open = new(seen);
        while (seen.Count < 5_000 && open.TryDequeue(out Configuration? at))
        {
            foreach (Arc arc in grammar.Automaton.Next(at).Arcs.Where(arc => seen.Add(arc.Target)))
            {
                open.Enqueue(arc.Target);
            }
        }

        return seen;
    }

    private static int Distance(string[] one, string[] other)
    {
        int least = int.MaxValue;
        foreach (string[] a in Ways(one))
        {
            foreach (string[] b in Ways(other))
            {
                least = Math.Abs(a.Length - b.Length) > 1 ? least : Math.Min(least, Levenshtein(a, b));
            }
        }

        return least;
    }

    private static string[][] Ways(string[] words) => Found.GetOrAdd(string.Join(' ', words), _ => [.. words
        .Aggregate<string, IEnumerable<string[]>>([[]], (ways, word) => ways.SelectMany(way => Sounds[word].Select(sounds => (string[])[.. way, .. sounds])))]);

    // Levenshtein, Binary codes capable of correcting deletions, insertions and reversals, 1966 (from memory).
    private static int Levenshtein(string[] a, string[] b)
    {
        int[] row = [.. Enumerable.Range(0, b.Length + 1)];
        for (int i = 1; i <= a.Length; i++)
        {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.Length; j++)
            {
                (diagonal, row[j]) = (row[j], Math.Min(Math.Min(row[j], row[j - 1]) + 1, diagonal + (a[i - 1] == b[j - 1] ? 0 : 1)));
            }
        }

        return row[b.Length];
    }
}
