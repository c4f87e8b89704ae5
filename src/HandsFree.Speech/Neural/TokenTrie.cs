namespace HandsFree.Speech.Neural;

/// <summary>A tree of tokens by their characters. Its nodes are numbers, so that the whole vocabulary is one table.</summary>
internal sealed class TokenTrie
{
    /// <summary>The node of no text.</summary>
    public const int Root = 0;

    private const int None = -1;
    private readonly Dictionary<(int Node, char Character), int> children = [];
    private readonly List<int> tokens = [None];

    /// <summary>The token whose text ends at a node, or null.</summary>
    public int? Token(int node) => tokens[node] == None ? null : tokens[node];

    /// <summary>The child of a node by a character, or null.</summary>
    public int? Child(int node, char c) => children.TryGetValue((node, c), out int child) ? child : null;

    /// <summary>Adds a token; of two with the same text the first is kept.</summary>
    public void Add(string text, int token)
    {
        int at = Root;
        foreach (char c in text)
        {
            if (!children.TryGetValue((at, c), out int child))
            {
                child = tokens.Count;
                tokens.Add(None);
                children.Add((at, c), child);
            }

            at = child;
        }

        if (tokens[at] == None)
        {
            tokens[at] = token;
        }
    }
}
