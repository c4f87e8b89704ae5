using HandsFree.Language.Grammars;

namespace HandsFree.Benchmarks.Sphinx;

/// <summary>All recordings of the shared audio with the grammars of their states.</summary>
internal static class TrialClips
{
    internal static IEnumerable<TrialClip> Read(string audio, string grammars)
    {
        Dictionary<string, Grammar> states = new[] { "readings", "identity", "confirmation", "count", "handover" }
            .ToDictionary(name => name, name => Grammar.Load(Path.Combine(grammars, name + ".jsgf")));
        Grammar numbers = Grammar.Load(Path.Combine(AppContext.BaseDirectory, "number-strings.jsgf"));
        foreach (string set in (string[])["dictation-synthetic", "dialogue-synthetic", "an4-numbers", "an4-spelled"])
        {
            string[][] rows = [.. File.ReadLines(Path.Combine(audio, set, "transcripts.tsv")).Skip(1).Select(line => line.Split('\t'))];
            List<string> speakers = [.. rows.Select(row => row[1]).Distinct().Order(StringComparer.Ordinal)];
            foreach (string[] row in rows)
            {
                Grammar grammar = set == "an4-numbers" ? numbers : set == "an4-spelled" ? states["readings"] : states[State(row[0][0])];
                yield return new(set, Path.Combine(audio, set, row[0]), row[2].ToLowerInvariant(), grammar, speakers.IndexOf(row[1]) % 2 == 0);
            }
        }
    }

    private static string State(char kind) => kind switch
    {
        'i' => "identity",
        'y' or 'n' => "confirmation",
        'k' => "count",
        'v' => "handover",
        _ => "readings",
    };
}
