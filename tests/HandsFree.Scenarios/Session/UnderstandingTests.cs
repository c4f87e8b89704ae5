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

    [Fact]
    public void Two_ways_of_saying_one_meaning_leave_no_doubt_between_them() =>
        Of(("pulse fifty", 0.5), ("pulse five zero", 0.4), ("pulse fifteen", 0.09)).Margin!.Value.ShouldBe(Math.Log(10), 1e-9);

    [Fact]
    public void What_the_search_left_out_is_as_good_as_another_meaning()
    {
        var hearing = Hearing(("goodbye", 0.95)) with { Unfound = 0.95 };
        Utterance(hearing).Margin.ShouldBe(0);
        Continuations.IsComplete(Readings, hearing).ShouldBeFalse();
    }

    [Fact]
    public void A_doubtful_hearing_is_an_utterance_that_says_so()
    {
        Utterance(Hearing(("pulse fifty", 0.5), ("pulse fifteen", 0.4)) with { Outcome = HearingOutcome.Doubtful }).Doubtful.ShouldBeTrue();
        Of(("pulse fifty", 0.9)).Doubtful.ShouldBeFalse();
    }

    [Theory]
    [InlineData(true, "pulse fifty irregular", "pulse fifty", 0.9, 0.05)]
    [InlineData(false, "pulse fifty irregular", "pulse fifty", 0.7, 0.2)]
    [InlineData(false, "pulse fifty", "pulse fifty irregular", 0.9, 0.05)]
    public void An_answer_is_complete_where_nothing_likely_could_go_on(bool complete, string best, string next, double first, double second) =>
        Continuations.IsComplete(Readings, Hearing((best, first), (next, second))).ShouldBe(complete);

    private static DialogueEvent.Utterance Of(params (string Words, double Probability)[] heard) => Utterance(Hearing(heard));

    private static DialogueEvent.Utterance Utterance(HandsFree.Speech.Hearing hearing) =>
        Understanding.Of(hearing, DateTimeOffset.UnixEpoch, -20, WeightUnit.Pounds).ShouldBeOfType<DialogueEvent.Utterance>();

    private static HandsFree.Speech.Hearing Hearing(params (string Words, double Probability)[] heard) => new(
        HearingOutcome.Heard,
        [.. heard.Select(h => new Candidate(Matcher.Match(Readings, h.Words).ShouldHaveSingleItem(h.Words), h.Words, h.Probability))],
        heard[0].Words);
}
