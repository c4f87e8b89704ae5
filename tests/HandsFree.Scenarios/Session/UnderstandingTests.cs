using HandsFree.App.Hear;
using HandsFree.App.Session;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Hearings;
using HandsFree.Core.Meanings;
using HandsFree.Core.Quantities;
using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using HandsFree.Speech;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Session;

public sealed class UnderstandingTests
{
    private static readonly Grammar Readings = new ListeningGrammars(new GrammarShelf(Path.Combine(Shared.Repository, "grammars")))
        .For(new Listening(ListeningKind.Readings))!;

    [Fact]
    public void All_values_that_were_possible_go_on_to_the_dialogue_with_their_probabilities()
    {
        DialogueEvent.Utterance heard = Of(("pulse fifty", 0.8), ("pulse fifteen", 0.15), ("pulse sixty", 0.01));
        heard.Alternatives.Select(a => a.Probability).ShouldBe([0.8, 0.15, 0.01], 1e-12);
        heard.Alternatives[0].Value.ShouldBe(heard.Meaning);
        heard.Alternatives[1].Value.ShouldBe(heard.RunnerUp);
    }

    [Fact]
    public void Two_ways_of_saying_one_meaning_are_one_alternative()
    {
        DialogueEvent.Utterance heard = Of(("pulse fifty", 0.6), ("pulse five zero", 0.3));
        Possible<Meaning> only = heard.Alternatives.ShouldHaveSingleItem();
        only.Probability.ShouldBe(0.9, 1e-12);
    }

    private static DialogueEvent.Utterance Of(params (string Words, double Probability)[] heard)
    {
        Candidate[] candidates = [.. heard.Select(h => new Candidate(Matcher.Match(Readings, h.Words).ShouldHaveSingleItem(h.Words), h.Words, h.Probability))];
        return Understanding.Of(new(HearingOutcome.Heard, candidates, heard[0].Words), DateTimeOffset.UnixEpoch, -20, WeightUnit.Pounds)
            .ShouldBeOfType<DialogueEvent.Utterance>();
    }
}
