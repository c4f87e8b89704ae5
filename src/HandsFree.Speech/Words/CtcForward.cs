using HandsFree.Language.Meaning;

namespace HandsFree.Speech.Words;

/// <summary>The forward algorithm of connectionist temporal classification (A. Graves and others, ICML 2006) over a grammar: the
/// probabilities of all alignments of all wordings are added, so that what comes out for a value is exact but for what pruning
/// dropped, and that is counted.</summary>
internal static class CtcForward
{
    /// <summary>The first place of a row that is a word; 0 is the blank.</summary>
    private const int SmallestWord = 1;

    /// <summary>Runs it.</summary>
    /// <param name="logProbabilities">Rows of natural logarithms, each row's probabilities summing to one; the blank has place 0.</param>
    /// <param name="width">Values of one row.</param>
    /// <param name="automaton">The grammar.</param>
    /// <param name="beam">Ways less likely than the likeliest by more than this (natural logarithm) are dropped; infinity for none.</param>
    /// <param name="most">At most so many ways go on from one row to the next, the likeliest.</param>
    internal static ForwardResult Run(
        ReadOnlySpan<float> logProbabilities, int width, SentenceAutomaton automaton, double beam, int most = int.MaxValue)
    {
        List<Way> ways = [new(automaton.Start, WordsModel.Blank, null) { Blank = 0 }];
        double dropped = 0;
        for (int row = 0; row < logProbabilities.Length / width; row++)
        {
            ways = Advance(ways, logProbabilities.Slice(row * width, width), automaton, beam, ref dropped);
            dropped += Prune(ways, beam, most);
        }

        return Sum(ways, automaton, dropped);
    }

    private static List<Way> Advance(List<Way> ways, ReadOnlySpan<float> row, SentenceAutomaton automaton, double beam, ref double dropped)
    {
        double least = Stay(ways, row) - beam;
        (int[] likely, double unlikely) = Likely(row, least - ways.Max(w => w.Total));
        if (likely.Length == 0)
        {
            dropped += ways.Sum(way => Math.Exp(way.Total)) * unlikely;
            foreach (Way way in ways)
            {
                GoOn(way, row);
            }

            return ways;
        }

        var next = new Dictionary<(SentenceState, int), Way>();
        foreach (Way way in ways)
        {
            double total = way.Total;
            dropped += Math.Exp(total) * unlikely;
            Way same = Get(next, way.State, way.Last, way.Words, total + row[WordsModel.Blank]);
            same.Blank = LogSum.Of(same.Blank, total + row[WordsModel.Blank]);
            if (way.Last != WordsModel.Blank && way.Spoken > double.NegativeInfinity)
            {
                same.Spoken = LogSum.Of(same.Spoken, way.Spoken + row[way.Last]);
            }

            foreach (SentenceArc arc in automaton.Arcs(way.State, likely))
            {
                // a word said twice needs a blank between
                double into = (arc.Place == way.Last ? way.Blank : total) + row[arc.Place];
                if (into < least)
                {
                    dropped += Math.Exp(into);
                }
                else if (into > double.NegativeInfinity)
                {
                    Way said = Get(next, automaton.Target(arc), arc.Place, null, into, (way, arc.Word));
                    said.Spoken = LogSum.Of(said.Spoken, into);
                }
            }
        }

        return [.. next.Values];
    }

    /// <summary>A way after a row in which nothing but quiet or the last word going on is likely: most rows are such.</summary>
    private static void GoOn(Way way, ReadOnlySpan<float> row)
    {
        double total = way.Total;
        way.Spoken = way.Last == WordsModel.Blank ? double.NegativeInfinity : way.Spoken + row[way.Last];
        way.Blank = total + row[WordsModel.Blank];
    }

    /// <summary>The places of a row whose words are likely enough to go on, and what the other words' probabilities sum to.</summary>
    private static (int[] Places, double Others) Likely(ReadOnlySpan<float> row, double least)
    {
        List<int> places = [];
        double rest = 0;
        for (int place = SmallestWord; place < row.Length; place++)
        {
            if (row[place] >= least)
            {
                places.Add(place);
            }
            else
            {
                rest += Math.Exp(row[place]);
            }
        }

        return ([.. places], rest);
    }

    /// <summary>How likely the likeliest way is after a row that adds no word to it.</summary>
    private static double Stay(List<Way> ways, ReadOnlySpan<float> row)
    {
        double best = double.NegativeInfinity;
        foreach (Way way in ways)
        {
            best = Math.Max(best, way.Total + row[WordsModel.Blank]);
            best = Math.Max(best, way.Spoken + row[way.Last]);
        }

        return best;
    }

    /// <summary>The way to a state by a last word, with the words of whatever reaches it most likely.</summary>
    private static Way Get(Dictionary<(SentenceState, int), Way> next, SentenceState state, int last, Spoken? words, double score, (Way Way, string Word)? from = null)
    {
        if (!next.TryGetValue((state, last), out Way? way))
        {
            way = new(state, last, null);
            next.Add((state, last), way);
        }

        if (score > way.Likeliest)
        {
            way.Likeliest = score;
            way.Words = from is null ? words : new Spoken(from.Value.Word, from.Value.Way.Words);
        }

        return way;
    }

    private static double Prune(List<Way> ways, double beam, int most)
    {
        double[] totals = [.. ways.Select(w => w.Total)];
        double least = totals.Max() - beam;
        if (ways.Count > most)
        {
            // ways that are as likely as the last one kept are kept too, so that nothing hangs on their order
            Array.Sort(totals);
            least = Math.Max(least, totals[^most]);
        }

        double dropped = 0;
        ways.RemoveAll(way =>
        {
            bool drops = way.Total < least;
            dropped += drops ? Math.Exp(way.Total) : 0;
            return drops;
        });
        return dropped;
    }

    private static ForwardResult Sum(List<Way> ways, SentenceAutomaton automaton, double dropped)
    {
        var values = new Dictionary<SemanticValue, (double Sum, double Best, Spoken? Words)>();
        double unfinished = 0, mayGoOn = 0, empty = 0;
        foreach (Way way in ways)
        {
            double probability = Math.Exp(way.Total);
            SemanticValue[] meanings = automaton.Meanings(way.State);
            bool isEmpty = way.State == automaton.Start && way.Words is null;
            empty += isEmpty ? probability : 0;
            unfinished += meanings.Length == 0 && !isEmpty ? probability : 0;
            mayGoOn += meanings.Length > 0 && automaton.MayGoOn(way.State) ? probability : 0;
            foreach (SemanticValue meaning in meanings)
            {
                double share = probability / meanings.Length;
                values[meaning] = values.TryGetValue(meaning, out var before)
                    ? (before.Sum + share, Math.Max(before.Best, share), share > before.Best ? way.Words : before.Words)
                    : (share, share, way.Words);
            }
        }

        return new(values.ToDictionary(v => v.Key, v => (v.Value.Sum, Spoken.Text(v.Value.Words))), unfinished, mayGoOn, empty, dropped);
    }

    /// <summary>All ways to a state whose last word is the same.</summary>
    private sealed class Way(SentenceState state, int last, Spoken? words)
    {
        public SentenceState State { get; } = state;

        /// <summary>Place of the last word; the blank before the first.</summary>
        public int Last { get; } = last;

        /// <summary>The words of the likeliest of them.</summary>
        public Spoken? Words { get; set; } = words;

        public double Likeliest { get; set; } = double.NegativeInfinity;

        /// <summary>Natural logarithm of the probability of those that end in a blank.</summary>
        public double Blank { get; set; } = double.NegativeInfinity;

        /// <summary>Of those that end in the last word.</summary>
        public double Spoken { get; set; } = double.NegativeInfinity;

        /// <summary>Of all of them.</summary>
        public double Total => LogSum.Of(Blank, Spoken);
    }

    /// <summary>Words said, the last first.</summary>
    private sealed record Spoken(string Word, Spoken? Before)
    {
        public static string Text(Spoken? last)
        {
            var words = new List<string>();
            for (Spoken? at = last; at is not null; at = at.Before)
            {
                words.Add(at.Word);
            }

            words.Reverse();
            return string.Join(' ', words);
        }
    }
}
