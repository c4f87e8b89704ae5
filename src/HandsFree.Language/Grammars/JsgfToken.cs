namespace HandsFree.Language.Grammars;

/// <summary>The kinds of tokens of a JSGF file.</summary>
internal enum JsgfTokenKind
{
    Word,
    RuleName,
    Tag,
    Weight,
    Sign,
    End,
}

/// <summary>One token of a JSGF file with its place.</summary>
internal readonly record struct JsgfToken(JsgfTokenKind Kind, string Text, SourcePosition At)
{
    public string Described => Kind switch
    {
        JsgfTokenKind.End => "the end of the file",
        JsgfTokenKind.RuleName => $"<{Text}>",
        JsgfTokenKind.Tag => $"the tag {{{Text}}}",
        JsgfTokenKind.Weight => $"the weight /{Text}/",
        _ => $"'{Text}'",
    };
}
