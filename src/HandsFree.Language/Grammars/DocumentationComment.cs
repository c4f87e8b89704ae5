namespace HandsFree.Language.Grammars;

/// <summary>Reads JSGF's documentation comments, "/** … */": the sentences behind <c>@example</c> (JSGF 1.0, section 5).</summary>
internal static class DocumentationComment
{
    private const string Mark = "@example ";

    /// <summary>The examples, one a line, lower case, in order.</summary>
    public static IReadOnlyList<string> Examples(string comment) =>
        [.. comment.Split('\n')
            .Select(line => line.Trim(' ', '\t', '\r', '*'))
            .Where(line => line.StartsWith(Mark, StringComparison.Ordinal))
            .Select(line => line[Mark.Length..].Trim().ToLowerInvariant())];
}
