using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using HandsFree.Speech;
using Shouldly;

namespace HandsFree.Scenarios.Session;

/// <summary>What an engine that hears perfectly would hear.</summary>
internal static class Heard
{
    public static HandsFree.Speech.Hearing In(Grammar grammar, string text)
    {
        var meaning = Matcher.Match(grammar, text).ShouldHaveSingleItem($"{text} in {grammar.Name}");
        return new HandsFree.Speech.Hearing(HearingOutcome.Heard, [new Candidate(meaning, text, 0.99)], text);
    }
}
