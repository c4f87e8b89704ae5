using System.Runtime.InteropServices;
using HandsFree.Language.Meaning;

namespace HandsFree.Speech.Neural;

/// <summary>Listens freely and follows along, and searches inside the grammar beside it: a beam of hypotheses that only take tokens
/// the grammar allows, batched with the free transcript in one decoder call. Most readings stay inside the grammar to the end, and
/// then the beam is little more than the free transcript itself.</summary>
internal sealed class GrammarSearch(NeuralModel model, SearchOptions options)
{
    /// <summary>Searches one utterance.</summary>
    /// <param name="samples">16 kHz mono with its quiet around it.</param>
    /// <param name="automaton">The grammar.</param>
    public SearchResult Run(float[] samples, WrittenAutomaton automaton)
    {
        using var state = new DecoderState(model, samples, options.Beam + 1);
        var search = new Progress(automaton, options);
        int longest = (int)(samples.Length / 16000.0 * options.TokensPerSecond) + 4;
        search.Advance(state.First(), isFirst: true);
        for (int step = 1; step < longest && search.IsOpen; step++)
        {
            search.Advance(state.Step(search.Rows()), isFirst: false);
        }

        return search.Result(model.Vocabulary);
    }

    private sealed class Progress(WrittenAutomaton automaton, SearchOptions options)
    {
        private readonly Dictionary<SemanticValue, (double LogProbability, double Likeliest, IReadOnlyList<int> Tokens)> values = [];
        private readonly List<Hypothesis> open = [new(0, 0, automaton.Start, true, [])];
        private readonly List<(int Parent, int Token)> rows = [];
        private readonly List<Continued> next = [];
        private readonly List<Continued> likeliest = [];
        private Hypothesis? free;
        private bool freeEnded;
        private double empty = double.NegativeInfinity;
        private double bestEnded = double.NegativeInfinity;
        private double dropped = double.NegativeInfinity;

        public bool IsOpen => open.Any(h => h.Node is not null);

        public ReadOnlySpan<(int Parent, int Token)> Rows() => CollectionsMarshal.AsSpan(rows);

        public void Advance(ReadOnlySpan<float> logits, bool isFirst)
        {
            int size = logits.Length / Math.Max(1, open.Count);
            next.Clear();
            foreach (Hypothesis h in open)
            {
                var probabilities = new LogSoftmax(logits.Slice(h.Row * size, size));
                if (isFirst)
                {
                    empty = probabilities[Vocabulary.End];
                }

                int freely = h.IsFree ? Freely(h, probabilities, isFirst) : -1;
                if (freely >= 0)
                {
                    WrittenNode? node = h.Node is null ? null : automaton.After(h.Node, freely);
                    next.Add(new(h.LogProbability + probabilities[freely], h.Row, freely, node, true, h.Tokens));
                }

                if (h.Node is not null)
                {
                    End(h, probabilities);
                    foreach (var (token, node) in automaton.Tokens(h.Node))
                    {
                        if (token != freely)
                        {
                            next.Add(new(h.LogProbability + probabilities[token], h.Row, token, node, false, h.Tokens));
                        }
                    }
                }
            }

            Keep();
        }

        public SearchResult Result(Vocabulary vocabulary) => new(
            values.ToDictionary(v => v.Key, v => (v.Value.LogProbability, automaton.Words(vocabulary.Text(v.Value.Tokens), v.Key), vocabulary.Text(v.Value.Tokens))),
            free is null ? "" : vocabulary.Text(free.Tokens).Trim(),
            free?.LogProbability ?? double.NegativeInfinity,
            empty,
            freeEnded && free is { Node: not null, Tokens.Count: > 0 } && automaton.Endings(free.Node).Length == 0)
        {
            Dropped = open.Where(h => h.Node is not null).Select(h => h.LogProbability).Append(dropped).Max(),
        };

        /// <summary>The free transcript's next token, or -1 at its end. No words at all is no evidence against a short answer, so at
        /// the first step the likeliest word is followed even where the end is likelier.</summary>
        private int Freely(Hypothesis h, LogSoftmax probabilities, bool isFirst)
        {
            int best = isFirst && probabilities.Best == Vocabulary.End ? probabilities.BestBut(Vocabulary.End) : probabilities.Best;
            if (best != Vocabulary.End)
            {
                free = h;
                return best;
            }

            free = h with { LogProbability = h.LogProbability + probabilities[best] };
            freeEnded = true;
            return -1;
        }

        private void End(Hypothesis h, LogSoftmax probabilities)
        {
            var endings = automaton.Endings(h.Node!);
            foreach (SemanticValue meaning in endings)
            {
                double ended = h.LogProbability + probabilities[Vocabulary.End] - Math.Log(endings.Length);
                bestEnded = Math.Max(bestEnded, ended);
                values[meaning] = values.TryGetValue(meaning, out var before)
                    ? (LogAdd(before.LogProbability, ended), Math.Max(before.Likeliest, ended), ended > before.Likeliest ? h.Tokens : before.Tokens)
                    : (ended, ended, h.Tokens);
            }
        }

        private void Keep()
        {
            int inside = Rank();
            double best = Math.Max(bestEnded, inside > 0 ? likeliest[0].LogProbability : double.NegativeInfinity);
            Continued? freely = Free();
            double floor = Math.Max(best - options.Width, (freely?.LogProbability ?? free?.LogProbability ?? double.NegativeInfinity) - options.Floor);
            int kept = 0;
            while (kept < Math.Min(inside, options.Beam) && likeliest[kept].LogProbability >= floor)
            {
                kept++;
            }

            if (inside > kept)
            {
                dropped = Math.Max(dropped, likeliest[kept].LogProbability);
            }

            open.Clear();
            rows.Clear();
            bool isFreeKept = false;
            foreach (Continued n in CollectionsMarshal.AsSpan(likeliest)[..kept])
            {
                Open(n, n.Node);
                isFreeKept |= n.IsFree;
            }

            if (freely is { } off)
            {
                if (kept > 0 && !isFreeKept)
                {
                    Open(off, null);
                }

                free = new(0, off.LogProbability, off.Node, true, [.. off.Before, off.Token]);
            }
        }

        private void Open(Continued n, WrittenNode? node)
        {
            open.Add(new(open.Count, n.LogProbability, node, n.IsFree, [.. n.Before, n.Token]));
            rows.Add((n.Parent, n.Token));
        }

        /// <summary>Puts the likeliest inside the grammar in order, one more than the beam holds; of equals the first stays first.</summary>
        /// <returns>How many there are.</returns>
        private int Rank()
        {
            likeliest.Clear();
            int inside = 0;
            foreach (Continued n in CollectionsMarshal.AsSpan(next))
            {
                if (n.Node is null)
                {
                    continue;
                }

                inside++;
                int at = likeliest.Count;
                while (at > 0 && n.LogProbability > likeliest[at - 1].LogProbability)
                {
                    at--;
                }

                if (at > options.Beam)
                {
                    continue;
                }

                likeliest.Insert(at, n);
                if (likeliest.Count > options.Beam + 1)
                {
                    likeliest.RemoveAt(likeliest.Count - 1);
                }
            }

            return inside;
        }

        private Continued? Free()
        {
            foreach (Continued n in CollectionsMarshal.AsSpan(next))
            {
                if (n.IsFree)
                {
                    return n;
                }
            }

            return null;
        }
    }

    /// <summary>A hypothesis and one more token.</summary>
    private readonly record struct Continued(double LogProbability, int Parent, int Token, WrittenNode? Node, bool IsFree, IReadOnlyList<int> Before);

    private static double LogAdd(double a, double b) => Math.Max(a, b) + Math.Log(1 + Math.Exp(-Math.Abs(a - b)));
}
