namespace HandsFree.App.Session;

/// <summary>A text's sentences, as they are spoken one by one.</summary>
internal static class Sentences
{
    /// <summary>Parts that end with a full stop or a question mark before a blank.</summary>
    public static IEnumerable<string> Of(string text)
    {
        int from = 0;
        for (int at = 0; at < text.Length - 1; at++)
        {
            if (text[at] is '.' or '?' && text[at + 1] == ' ')
            {
                yield return text[from..(at + 1)];
                from = at + 2;
            }
        }

        yield return text[from..];
    }
}
