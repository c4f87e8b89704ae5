using HandsFree.Language.Grammars;
using HandsFree.Speech.Neural;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Neural;

public sealed class WrittenAutomatonTests
{
    [Theory]
    [InlineData("readings", " Blood pressure 118 over 89.", """{"kind": "blood pressure", "value": [118, 89]}""")]
    [InlineData("readings", " Blood pressure, 1-18 over 89", """{"kind": "blood pressure", "value": [118, 89]}""")]
    [InlineData("readings", " Blood pressure 118/89.", """{"kind": "blood pressure", "value": [118, 89]}""")]
    [InlineData("readings", " Pulse 1, 1, 8.", """{"kind": "pulse", "value": 118}""")]
    [InlineData("readings", " Pulse one hundred and eighteen.", """{"kind": "pulse", "value": 118}""")]
    [InlineData("readings", " Heart rate fifty-nine.", """{"kind": "pulse", "value": 59}""")]
    [InlineData("readings", " Pulse 108", """{"kind": "pulse", "value": 108}""")]
    [InlineData("readings", " Temperature 98.6", """{"kind": "temperature", "value": 98.6}""")]
    [InlineData("readings", " Temperature, 98 point 6.", """{"kind": "temperature", "value": 98.6}""")]
    [InlineData("readings", " Temperature 98.6°F", """{"kind": "temperature", "value": 98.6, "unit": "F"}""")]
    [InlineData("readings", " Oxygen 94%", """{"kind": "oxygen", "value": 94}""")]
    [InlineData("readings", " Oxygen 94% on 2 liters", """{"kind": "oxygen", "value": 94, "qualifiers": ["on two liters"]}""")]
    [InlineData("readings", " 16-18.", """{"hedge": true}""")]
    [InlineData("readings", " About 70.", """{"hedge": true}""")]
    [InlineData("identity", " October 25th, 1945.", """{"born": "1945-10-25"}""")]
    [InlineData("identity", " Room 112, bed B.", """{"room": 112, "bed": "b"}""")]
    [InlineData("confirmation", " No, 57.", """{"corrected": 57}""")]
    [InlineData("confirmation", " That's right.", """{"confirm": true}""")]
    public void What_the_model_writes_means_what_was_said(string state, string text, string meaning) =>
        Automaton(state).Meanings(text).Select(m => m.ToString()).ShouldBe([meaning]);

    [Theory]
    [InlineData("readings", " Yes.")]
    [InlineData("readings", " Blood pressure 118.")]
    [InlineData("readings", " Pulse 1.18")]
    [InlineData("readings", " Pulse 2")]
    [InlineData("readings", " Pulse 605")]
    [InlineData("readings", " Pulse 1005")]
    [InlineData("readings", " Pulse 60 5")]
    [InlineData("readings", " What time is lunch?")]
    [InlineData("readings", " Pulse 72. Pulse 73")]
    [InlineData("identity", " Room twelve.. bed B")]
    public void What_is_no_sentence_means_nothing(string state, string text) => Automaton(state).Meanings(text).ShouldBeEmpty();

    [Fact]
    public void The_words_are_those_of_the_text()
    {
        WrittenAutomaton automaton = Automaton("handover");
        automaton.Words(" How is room 14?", automaton.Meanings(" How is room 14?").Single()).ShouldBe("how is room fourteen");
        automaton.Words(" Room 14", automaton.Meanings(" Room 14").Single()).ShouldBe("room fourteen");
    }

    [Fact]
    public void Tokens_that_can_follow_are_found_by_their_characters()
    {
        string[] texts = [.. Enumerable.Repeat("", Vocabulary.FirstText), " P", "ul", "se", " Pulse", " Pig", "x"];
        var vocabulary = new Vocabulary(texts);
        var automaton = new WrittenAutomaton(Load("readings"), vocabulary);
        int first = Vocabulary.FirstText;
        automaton.Tokens(automaton.Start).Select(t => t.Token).Order().ShouldBe([first, first + 2, first + 3]);
        WrittenNode afterP = automaton.After(automaton.Start, first)!;
        automaton.Tokens(afterP).Select(t => t.Token).ShouldBe([first + 1]);
        automaton.After(automaton.After(afterP, first + 1)!, first + 2).ShouldBeSameAs(automaton.After(automaton.Start, first + 3));
    }

    private static WrittenAutomaton Automaton(string state) => new(Load(state), new Vocabulary([]));

    private static Grammar Load(string state) => Grammar.Load(Path.Combine(Shared.Repository, "grammars", state + ".jsgf"));
}
