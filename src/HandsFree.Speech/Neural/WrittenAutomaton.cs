using HandsFree.Language.Automata;
using HandsFree.Language.Grammars;
using HandsFree.Language.Meaning;

namespace HandsFree.Speech.Neural;

/// <summary>The grammar as an automaton over the characters that the model writes, made deterministic where it is walked, and the
/// tokens that each state allows, found by walking the token tree along it. One thread at a time.</summary>
internal sealed class WrittenAutomaton
{
    private readonly WordAutomaton words;
    private readonly Vocabulary vocabulary;
    private readonly Dictionary<WrittenNode, WrittenNode> nodes = new(new SameItems());
    private readonly Dictionary<(Configuration, Joint), WrittenItem[]> openings = [];
    private readonly Dictionary<Configuration, Configuration> ended = [];

    public WrittenAutomaton(Grammar grammar, Vocabulary vocabulary)
    {
        words = new(grammar);
        this.vocabulary = vocabulary;
        Start = Intern([new(words.Start, Joint.Start, "", 0, null)]);
    }

    /// <summary>Nothing is written.</summary>
    public WrittenNode Start { get; }

    /// <summary>How many states were made so far.</summary>
    public int Size => nodes.Count;

    /// <summary>The tokens that can follow, each with the state after it.</summary>
    public (int Token, WrittenNode Node)[] Tokens(WrittenNode node)
    {
        if (node.Tokens is null)
        {
            var found = new List<(int, WrittenNode)>();
            Collect(node, TokenTrie.Root, found);
            node.Tokens = [.. found];
        }

        return node.Tokens;
    }

    /// <summary>The state after one token, or null when the token leaves the grammar.</summary>
    public WrittenNode? After(WrittenNode node, int token)
    {
        foreach (var (allowed, next) in Tokens(node))
        {
            if (allowed == token)
            {
                return next;
            }
        }

        return null;
    }

    /// <summary>What the text means if it ends here; none where it can't.</summary>
    public SemanticValue[] Endings(WrittenNode node) => node.Endings ??=
        [.. node.Items.Where(IsEnded).SelectMany(i => words.Next(i.Target).Meanings).Distinct()];

    /// <summary>The spoken words of a text that the grammar accepts with a meaning; the first where several are written alike.</summary>
    public string Words(string text, SemanticValue meaning) =>
        Walk(text).First(i => IsEnded(i) && words.Next(i.Target).Meanings.Contains(meaning)).Words?.ToString() ?? "";

    /// <summary>All that a written text means; none when it is no sentence.</summary>
    public IReadOnlyList<SemanticValue> Meanings(string text) =>
        [.. Walk(text).Where(IsEnded).SelectMany(i => words.Next(i.Target).Meanings).Distinct()];

    private HashSet<WrittenItem> Walk(string text)
    {
        HashSet<WrittenItem> at = [.. Start.Items];
        foreach (char c in text)
        {
            var next = new HashSet<WrittenItem>();
            foreach (WrittenItem item in at)
            {
                Follow(item, c, next);
            }

            at = next;
        }

        return at;
    }

    private static bool IsEnded(WrittenItem item) => item.At == item.Text.Length && Writing.CanEnd(item.Joint);

    private void Collect(WrittenNode node, int tokens, List<(int, WrittenNode)> found)
    {
        foreach (char c in Characters(node))
        {
            if (vocabulary.Tree.Child(tokens, c) is not { } child || Next(node, c) is not { } next)
            {
                continue;
            }

            if (vocabulary.Tree.Token(child) is { } token)
            {
                found.Add((token, next));
            }

            Collect(next, child, found);
        }
    }

    /// <summary>The characters that some way through the grammar can go on with. Found once: many tokens lead through one state.</summary>
    private char[] Characters(WrittenNode node) => node.Characters ??= CharactersAfter(node);

    private char[] CharactersAfter(WrittenNode node)
    {
        var characters = new SortedSet<char>();
        foreach (WrittenItem item in node.Items)
        {
            if (item.At < item.Text.Length)
            {
                characters.Add(item.Text[item.At]);
                continue;
            }

            foreach (WrittenItem opening in Openings(item.Target, item.Joint))
            {
                characters.Add(opening.Text[0]);
            }

            if (Writing.CanEnd(item.Joint))
            {
                characters.UnionWith(Writing.Endings.Where(e => e.Length > 0).Select(e => e[0]));
            }
        }

        return [.. characters];
    }

    private WrittenNode? Next(WrittenNode node, char c)
    {
        if (!node.Next.TryGetValue(c, out WrittenNode? next))
        {
            var items = new HashSet<WrittenItem>();
            foreach (WrittenItem item in node.Items)
            {
                Follow(item, c, items);
            }

            next = items.Count == 0 ? null : Intern([.. items]);
            node.Next.Add(c, next);
        }

        return next;
    }

    private void Follow(WrittenItem item, char c, HashSet<WrittenItem> items)
    {
        if (item.At < item.Text.Length)
        {
            if (item.Text[item.At] == c)
            {
                items.Add(item with { At = item.At + 1 });
            }

            return;
        }

        foreach (WrittenItem opening in Openings(item.Target, item.Joint))
        {
            if (opening.Text[0] == c)
            {
                items.Add(opening with { At = 1, Words = Join(item.Words, opening.Words) });
            }
        }

        if (Writing.CanEnd(item.Joint) && !words.Next(item.Target).Meanings.IsEmpty)
        {
            foreach (string ending in Writing.Endings)
            {
                if (ending.Length > 0 && ending[0] == c)
                {
                    items.Add(new(Ended(item.Target), Joint.Letters, ending, 1, item.Words));
                }
            }
        }
    }

    /// <summary>The next words in all their written forms; forms of no text are followed to the word after.</summary>
    private WrittenItem[] Openings(Configuration at, Joint joint)
    {
        if (!openings.TryGetValue((at, joint), out WrittenItem[]? known))
        {
            var found = new List<WrittenItem>();
            foreach (Arc arc in words.Next(at).Arcs)
            {
                foreach (WrittenForm form in Writing.Of(arc.Word, joint))
                {
                    var item = new WrittenItem(arc.Target, form.Joint, form.Text, 0, new(arc.Word, null));
                    if (form.Text.Length > 0)
                    {
                        found.Add(item);
                    }
                    else
                    {
                        found.AddRange(Openings(arc.Target, form.Joint).Select(next => next with { Words = Join(item.Words, next.Words) }));
                    }
                }
            }

            known = [.. found];
            openings.Add((at, joint), known);
        }

        return known;
    }

    /// <summary>The configuration with nothing after it: after a full stop the sentence is over.</summary>
    private Configuration Ended(Configuration at)
    {
        if (!ended.TryGetValue(at, out Configuration? over))
        {
            over = words.WithoutArcs(at);
            ended.Add(at, over);
        }

        return over;
    }

    private static WordPath? Join(WordPath? before, WordPath? after) =>
        after is null ? before : new(after.Word, Join(before, after.Before));

    private WrittenNode Intern(WrittenItem[] items)
    {
        var node = new WrittenNode(items);
        if (nodes.TryGetValue(node, out WrittenNode? known))
        {
            return known;
        }

        nodes.Add(node, node);
        return node;
    }

    private sealed class SameItems : IEqualityComparer<WrittenNode>
    {
        public bool Equals(WrittenNode? a, WrittenNode? b) => a!.Items.AsSpan().SequenceEqual(b!.Items);

        public int GetHashCode(WrittenNode node) => node.Items.Aggregate(17, HashCode.Combine);
    }
}
