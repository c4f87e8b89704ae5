using HandsFree.Language.Tests.Spoken;

namespace HandsFree.Language.Tests.Sentences;

/// <summary>Reads grammars/NAME.sentences.txt; the format stands at the top of readings.sentences.txt.</summary>
internal static class SentenceFile
{
    public static IReadOnlyList<SentenceLine> Read(string path)
    {
        var lines = new List<SentenceLine>();
        string? rule = null;
        foreach (var (number, line) in File.ReadAllLines(path).Index())
        {
            switch (line)
            {
                case "" or ['#', ..]:
                    break;
                case ['@', ' ', .. var name]:
                    rule = name.Trim();
                    break;
                case ['!', ' ', .. var words]:
                    lines.Add(new(rule, words, null, number + 1));
                    break;
                case ['=', ' ', .. var both] when both.Split(" -> ") is [var words, var meaning]:
                    lines.Add(new(rule, words, Means.Json(meaning), number + 1));
                    break;
                default:
                    throw new FormatException($"{Path.GetFileName(path)}:{number + 1}: expected '= sentence -> meaning', '! sentence', '@ rule', '#' or nothing, found '{line}'");
            }
        }

        return lines;
    }
}
