namespace HandsFree.Language.Grammars;

/// <summary>Cuts a JSGF text into tokens (JSpeech Grammar Format 1.0, W3C note of 5 June 2000).</summary>
internal sealed class JsgfLexer(string text, string file)
{
    private int at;
    private int line = 1;
    private int lineStart;

    private SourcePosition Here => new(file, line, at - lineStart + 1);

    /// <summary>Reads the header "#JSGF V1.0 …;".</summary>
    public void Header()
    {
        if (text.StartsWith('\uFEFF'))
        {
            at++;
            lineStart++;
        }

        if (!text.AsSpan(at).StartsWith("#JSGF V1.0"))
        {
            throw new GrammarException(Here, "expected the header '#JSGF V1.0;' as the first line");
        }

        int end = text.IndexOf(';', at);
        if (end < 0)
        {
            throw new GrammarException(Here, "expected ';' after the header");
        }

        at = end + 1;
    }

    /// <summary>The next token.</summary>
    public JsgfToken Next()
    {
        SkipBlank();
        SourcePosition start = Here;
        if (at >= text.Length)
        {
            return new(JsgfTokenKind.End, "", start);
        }

        char c = text[at];
        return c switch
        {
            '<' => new(JsgfTokenKind.RuleName, Enclosed('>', start, "a rule name").Trim(), start),
            '{' => new(JsgfTokenKind.Tag, Enclosed('}', start, "a tag"), start),
            '/' => new(JsgfTokenKind.Weight, Enclosed('/', start, "a weight"), start),
            '"' => new(JsgfTokenKind.Word, Enclosed('"', start, "a quoted word"), start),
            ';' or '=' or '|' or '*' or '+' or '(' or ')' or '[' or ']' => Sign(c, start),
            _ => Word(start),
        };
    }

    private JsgfToken Sign(char c, SourcePosition start)
    {
        at++;
        return new(JsgfTokenKind.Sign, c.ToString(), start);
    }

    private JsgfToken Word(SourcePosition start)
    {
        int from = at;
        while (at < text.Length && !char.IsWhiteSpace(text[at]) && !"<>{}/\";=|*+()[]".Contains(text[at], StringComparison.Ordinal))
        {
            at++;
        }

        return at > from
            ? new(JsgfTokenKind.Word, text[from..at], start)
            : throw new GrammarException(start, $"expected a word, a <rule>, '(' or '[', found '{text[at]}'");
    }

    private string Enclosed(char close, SourcePosition start, string what)
    {
        int from = ++at;
        while (at < text.Length && text[at] != close)
        {
            NewLine();
            at++;
        }

        if (at >= text.Length)
        {
            throw new GrammarException(start, $"expected '{close}' at the end of {what}, found the end of the file");
        }

        return text[from..at++];
    }

    private void SkipBlank()
    {
        while (at < text.Length)
        {
            if (char.IsWhiteSpace(text[at]))
            {
                NewLine();
                at++;
            }
            else if (text.AsSpan(at).StartsWith("//"))
            {
                while (at < text.Length && text[at] != '\n')
                {
                    at++;
                }
            }
            else if (text.AsSpan(at).StartsWith("/*"))
            {
                SourcePosition start = Here;
                int end = text.IndexOf("*/", at + 2, StringComparison.Ordinal);
                if (end < 0)
                {
                    throw new GrammarException(start, "expected '*/' at the end of a comment, found the end of the file");
                }

                for (; at < end + 2; at++)
                {
                    NewLine();
                }
            }
            else
            {
                return;
            }
        }
    }

    private void NewLine()
    {
        if (text[at] == '\n')
        {
            line++;
            lineStart = at + 1;
        }
    }
}
