namespace HandsFree.Speech.Neural;

/// <summary>A tree of tokens by their characters.</summary>
internal sealed class TokenTrie
{
    private Dictionary<char, TokenTrie>? children;

    /// <summary>The token that ends here, or -1.</summary>
    public int Token { get; private set; } = -1;

    /// <summary>The child of a character, or null.</summary>
    public TokenTrie? Child(char c) => children?.GetValueOrDefault(c);

    /// <summary>Adds a token; of two with the same text the first is kept.</summary>
    public void Add(string text, int token)
    {
        TokenTrie at = this;
        foreach (char c in text)
        {
            at.children ??= [];
            if (!at.children.TryGetValue(c, out TokenTrie? child))
            {
                child = new TokenTrie();
                at.children.Add(c, child);
            }

            at = child;
        }

        at.Token = at.Token < 0 ? token : at.Token;
    }
}
