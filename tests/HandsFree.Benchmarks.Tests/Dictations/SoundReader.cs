using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using HandsFree.Speech;

namespace HandsFree.Benchmarks.Tests.Dictations;

/// <summary>An engine that hears every word of <see cref="MarkedVoices"/>, but mistakes some numbers for others on purpose.</summary>
/// <param name="voices">Who speaks.</param>
/// <param name="mistaken">Share of sentences with a number in which one of its words is taken for another one.</param>
internal sealed class SoundReader(MarkedVoices voices, double mistaken) : IRecognizer
{
    private static readonly string[][] Alike =
    [
        ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine"],
        ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"],
        ["eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"],
    ];

    private readonly Random random = new(7);

    public string Name => "marked";

    /// <summary>Sentences that were heard as others.</summary>
    public int Mistakes { get; private set; }

    public void Prepare(Grammar grammar)
    {
        // Nothing to make ready.
    }

    public HandsFree.Speech.Hearing Hear(ReadOnlySpan<float> samples, Grammar grammar)
    {
        string? text = voices.TextOf(samples);
        if (text is null || Matcher.Match(grammar, text).Count == 0)
        {
            return new(HearingOutcome.NoReading, [], text ?? "");
        }

        string heard = grammar.Name.StartsWith("identity", StringComparison.Ordinal) || random.NextDouble() >= mistaken ? text : Mistake(text, grammar);
        return new(HearingOutcome.Heard, [new Candidate(Matcher.Match(grammar, heard)[0], heard, 0.99)], heard);
    }

    public void Dispose()
    {
        // Holds nothing.
    }

    private string Mistake(string text, Grammar grammar)
    {
        string[] words = text.Split(' ');
        int[] numbers = [.. Enumerable.Range(0, words.Length).Where(i => Alike.Any(a => a.Contains(words[i])))];
        for (int attempt = 0; attempt < 20 && numbers.Length > 0; attempt++)
        {
            string[] other = [.. words];
            int at = numbers[random.Next(numbers.Length)];
            string[] alike = Alike.First(a => a.Contains(words[at]));
            other[at] = alike[random.Next(alike.Length)];
            string changed = string.Join(' ', other);
            if (changed != text && Matcher.Match(grammar, changed).Count == 1)
            {
                Mistakes++;
                return changed;
            }
        }

        return text;
    }
}
