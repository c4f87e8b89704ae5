using System.Text.Json;
using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using HandsFree.Speech;

namespace HandsFree.Benchmarks.Dictations.Sound;

/// <summary>Hearings on disk, one line each: every process appends to a file of its own and reads those of all.</summary>
internal sealed class HearingStore : IDisposable
{
    private readonly Dictionary<string, Line> lines = [];
    private readonly StreamWriter file;

    /// <summary>Opens a folder.</summary>
    public HearingStore(string folder)
    {
        Directory.CreateDirectory(folder);
        foreach (string each in Directory.EnumerateFiles(folder, "hearings-*.jsonl"))
        {
            Read(each);
        }

        file = new StreamWriter(new FileStream(
            Path.Combine(folder, $"hearings-{Environment.ProcessId}.jsonl"), FileMode.Append, FileAccess.Write, FileShare.ReadWrite)) { AutoFlush = true };
    }

    /// <summary>The hearing of a key, or null.</summary>
    public Speech.Hearing? Find(string key, Grammar grammar) => lines.TryGetValue(key, out Line? line)
        ? new Speech.Hearing(line.Outcome, [.. line.Candidates.Select(c => new Candidate(Matcher.Match(grammar, c.Words)[0], c.Words, c.Probability))], line.Transcript) { Unfound = line.Unfound }
        : null;

    /// <summary>Keeps a hearing. One whose words don't lead back to what they mean can't be kept.</summary>
    public bool Keep(string key, Speech.Hearing hearing, Grammar grammar)
    {
        if (!hearing.Candidates.All(c => Matcher.Match(grammar, c.Words) is [var only] && only.Equals(c.Meaning)))
        {
            return false;
        }

        Line line = new(key, hearing.Outcome, hearing.Transcript, [.. hearing.Candidates.Select(c => new Kept(c.Words, c.Probability))], hearing.Unfound);
        lines[key] = line;
        file.WriteLine(JsonSerializer.Serialize(line));
        return true;
    }

    /// <inheritdoc/>
    public void Dispose() => file.Dispose();

    private void Read(string path)
    {
        using StreamReader reader = new(new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite));
        while (reader.ReadLine() is { } text)
        {
            // The last line of a process that was killed, or is writing, may be cut.
            if (text.EndsWith('}') && JsonSerializer.Deserialize<Line>(text) is { } line)
            {
                lines[line.Key] = line;
            }
        }
    }

    private sealed record Kept(string Words, double Probability);

    private sealed record Line(string Key, HearingOutcome Outcome, string Transcript, IReadOnlyList<Kept> Candidates, double Unfound);
}
