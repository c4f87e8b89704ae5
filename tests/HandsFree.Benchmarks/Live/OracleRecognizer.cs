using HandsFree.App.Demo.Room;
using HandsFree.App.Demo.Script;
using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using HandsFree.Speech;

namespace HandsFree.Benchmarks.Live;

/// <summary>Hears what was said in the room, word for word: for what comes before and after the engine. Told and asked on the room's
/// thread.</summary>
internal sealed class OracleRecognizer : IRecognizer, IRoomWatcher
{
    private string text = "";

    /// <inheritdoc/>
    public string Name => "oracle";

    /// <inheritdoc/>
    public void Prepare(Grammar grammar)
    {
        // Knows them all.
    }

    /// <inheritdoc/>
    public HandsFree.Speech.Hearing Hear(ReadOnlySpan<float> samples, Grammar grammar)
    {
        string words = string.Join(' ', Matcher.WordsOf(text));
        return Matcher.Match(grammar, words) is [var meaning, ..]
            ? new HandsFree.Speech.Hearing(HearingOutcome.Heard, [new Candidate(meaning, words, 0.999)], words)
            : HandsFree.Speech.Hearing.Nothing with { Outcome = HearingOutcome.NoReading };
    }

    /// <inheritdoc/>
    public void Speaks(DateTimeOffset at, DemoClip clip) => text = clip.Text;

    /// <inheritdoc/>
    public void MovesOn(DateTimeOffset at)
    {
        // Nobody speaks.
    }

    /// <inheritdoc/>
    public void Passed(ReadOnlySpan<float> aide, ReadOnlySpan<float> program)
    {
        // The words are known.
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        // Holds nothing.
    }
}
