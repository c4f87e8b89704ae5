using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using HandsFree.Speech;

namespace HandsFree.Benchmarks.Tests.Dictations;

/// <summary>The dialogue without its confirmation, from outside: whatever is answered to a read-back counts as a yes, and whatever is
/// said when a value is to be said again counts as the value that was read back. What was heard is so saved at once. There is no such
/// switch in the product.</summary>
internal sealed class NoConfirmation(IRecognizer engine) : IRecognizer
{
    private HandsFree.Speech.Hearing? last;

    public string Name => engine.Name;

    public void Prepare(Grammar grammar) => engine.Prepare(grammar);

    public HandsFree.Speech.Hearing Hear(ReadOnlySpan<float> samples, Grammar grammar)
    {
        HandsFree.Speech.Hearing heard = engine.Hear(samples, grammar);
        if (grammar.Name.StartsWith("confirmation#", StringComparison.Ordinal) && grammar.Name != "confirmation#yes_no")
        {
            return In(grammar, "yes")!;
        }

        if (grammar.Name.StartsWith("value#", StringComparison.Ordinal) && last?.Best is { } said && Number(said.Words, grammar) is { } again)
        {
            return again;
        }

        last = heard.Outcome == HearingOutcome.Heard ? heard : last;
        return heard;
    }

    public void Dispose() => engine.Dispose();

    // The number at the end of a sentence, as a sentence of the grammar of a bare value.
    private static HandsFree.Speech.Hearing? Number(string words, Grammar grammar)
    {
        string[] all = words.Split(' ');
        return Enumerable.Range(0, all.Length).Select(i => In(grammar, string.Join(' ', all[i..]))).FirstOrDefault(h => h is not null);
    }

    private static HandsFree.Speech.Hearing? In(Grammar grammar, string words) =>
        Matcher.Match(grammar, words) is [var meaning] ? new(HearingOutcome.Heard, [new Candidate(meaning, words, 0.99)], words) : null;
}
