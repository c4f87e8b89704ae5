namespace HandsFree.Language.Grammars;

/// <summary>Cuts a JSGF text into tokens (JSpeech Grammar Format 1.0, W3C note of 5 June 2000).</summary>
internal sealed class JsgfLexer(string text, string file)
{
    private const string Version = "#JSGF V1.0";
    private int at;
    private int line = 1;
    private int lineStart;
    private string comment = "";

    private SourcePosition Here => new(file, line, at - lineStart + 1);

    /// <summary>Reads the header "#JSGF V1.0 …;".</summary>
    public void Header()
    {
        if (text.StartsWith('\uFEFF'))
        {
            at++;
            lineStart++;
        }

        if (!text.AsSpan(at).StartsWith(Version))
        {
            throw new GrammarException(Here, "expected the header '#JSGF V1.0;' as the first line");
        }

        int lineEnd = text.AsSpan(at).IndexOfAny('\r', '\n');
        ReadOnlySpan<char> header = lineEnd < 0 ? text.AsSpan(at) : text.AsSpan(at, lineEnd);
        int end = header.IndexOf(';');
        int afterVersion = Version.Length;
        if (afterVersion < header.Length && header[afterVersion] is not (' ' or '\t' or ';'))
        {
            throw new GrammarException(Here with { Column = Here.Column + afterVersion }, "expected version 1.0: '#JSGF V1.0;'");
        }

        if (end < 0)
        {
            throw new GrammarException(Here with { Column = Here.Column + header.Length }, "expected ';' at the end of the header line");
        }

        at += end + 1;
    }

    /// <summary>The documentation comment that was passed last; taking it forgets it.</summary>
    public string TakeComment()
    {
        string taken = comment;
        comment = "";
        return taken;
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
        bool mayEscape = close is '}' or '"';
        while (at < text.Length && text[at] != close)
        {
            if (mayEscape && text[at] == '\\' && at + 1 < text.Length)
            {
                at++;
            }

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
                while (at < text.Length && text[at] is not ('\n' or '\r'))
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

                if (text.AsSpan(at).StartsWith("/**"))
                {
                    comment = text[(at + 2)..end];
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
        if (text[at] == '\n' || (text[at] == '\r' && !text.AsSpan(at + 1).StartsWith("\n")))
        {
            line++;
            lineStart = at + 1;
        }
    }
}
