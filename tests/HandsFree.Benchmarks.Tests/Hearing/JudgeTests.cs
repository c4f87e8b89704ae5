using System.Text.Json.Nodes;
using HandsFree.Benchmarks.Hearing;
using HandsFree.Benchmarks.Recordings;
using HandsFree.Benchmarks.Results;
using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using HandsFree.Speech;
using Shouldly;
using Xunit;

namespace HandsFree.Benchmarks.Tests.Hearing;

public sealed class JudgeTests
{
    private static readonly Grammar Small = Grammar.Parse(
        """
        #JSGF V1.0;
        grammar small;
        public <any> = pulse <number> { kind = 'pulse'; value = $number } | about <number> { hedge = true } | yes { confirm = true } | no { confirm = false } | stop { command = 'stop' };
        <number> = seventy {70} | eighty {80};
        """,
        "small");

    [Theory]
    [InlineData("pulse seventy", """{"kind":"pulse","value":70}""", "pulse seventy", nameof(Verdict.Right))]
    [InlineData("pulse seventy", """{"kind":"pulse","value":70}""", "pulse eighty", nameof(Verdict.WrongValue))]
    [InlineData("pulse seventy", """{"kind":"pulse","value":70}""", "stop", nameof(Verdict.WrongOther))]
    [InlineData("pulse seventy", """{"kind":"pulse","value":70}""", "about seventy", nameof(Verdict.WrongOther))]
    [InlineData("about seventy", """{"hedge":true}""", "pulse seventy", nameof(Verdict.WrongValue))]
    [InlineData("pulse seventy", """{"kind":"pulse","value":70}""", null, nameof(Verdict.NotHeard))]
    [InlineData("her pulse is seventy", """{"kind":"pulse","value":70}""", null, nameof(Verdict.OutsideGrammar))]
    [InlineData("her pulse is seventy", """{"kind":"pulse","value":70}""", "pulse eighty", nameof(Verdict.WrongValue))]
    [InlineData("good morning", null, null, nameof(Verdict.Refused))]
    [InlineData("good morning", null, "pulse eighty", nameof(Verdict.LetIn))]
    [InlineData("good morning", null, "stop", nameof(Verdict.LetIn))]
    [InlineData("it was about seventy", null, "about seventy", nameof(Verdict.Refused))]
    public void A_hearing_has_its_verdict(string words, string? meaning, string? heard, string verdict) =>
        Row(words, meaning, heard).Verdict.ToString().ShouldBe(verdict);

    [Theory]
    [InlineData("no", """{"confirm":false}""", "yes", true)]
    [InlineData("good morning", null, "yes", true)]
    [InlineData("pulse seventy", """{"kind":"pulse","value":70}""", "yes", true)]
    [InlineData("yes", """{"confirm":true}""", "yes", false)]
    [InlineData("yes", """{"confirm":true}""", "no", false)]
    [InlineData("no", """{"confirm":false}""", null, false)]
    public void A_yes_that_was_none_is_stray(string words, string? meaning, string? heard, bool stray) =>
        Row(words, meaning, heard).StrayYes.ShouldBe(stray);

    [Fact]
    public void Without_a_column_of_meanings_the_grammar_says_what_words_mean()
    {
        Judge.Row(new("set", "a.wav", "ann", "PULSE SEVENTY", false, null), Small, "small", Heard("pulse seventy")).Verdict.ShouldBe(Verdict.Right);
        HeardRow other = Judge.Row(new("set", "a.wav", "ann", "hello", false, null), Small, "small", Heard("pulse seventy"));
        (other.Verdict, other.Kind).ShouldBe((Verdict.LetIn, "no reading"));
    }

    [Fact]
    public void The_rest_of_the_probability_is_none_of_these()
    {
        HeardRow row = Row("pulse seventy", """{"kind":"pulse","value":70}""", "pulse seventy", "pulse eighty");

        row.NoneProbability.ShouldBe(0.1, 1e-12);
        row.Margin!.Value.ShouldBe(Math.Log(0.8 / 0.1), 1e-12);
        row.Candidates.Select(c => (c.Probability, c.Right)).ShouldBe([(0.8, true), (0.1, false)]);
    }

    /// <summary>A refused hearing keeps its candidates as evidence: they are no verdict.</summary>
    [Fact]
    public void What_was_refused_is_not_heard_whatever_was_found()
    {
        Speech.Hearing refused = Heard("pulse eighty") with { Outcome = HearingOutcome.NoReading };

        Judge.Row(Said("pulse seventy", """{"kind":"pulse","value":70}"""), Small, "small", refused).Verdict.ShouldBe(Verdict.NotHeard);
    }

    private static HeardRow Row(string words, string? meaning, params string?[] heard) =>
        Judge.Row(Said(words, meaning), Small, "small", heard[0] is null ? new(HearingOutcome.NoReading, [], "") : Heard(heard!));

    private static Transcript Said(string words, string? meaning) =>
        new("set", "a.wav", "ann", words, true, meaning is null ? null : JsonNode.Parse(meaning)!.AsObject());

    private static Speech.Hearing Heard(params string[] words)
    {
        double[] probabilities = [0.8, 0.1];
        return new(HearingOutcome.Heard, [.. words.Select((w, i) => new Candidate(Matcher.Match(Small, w).Single(), w, probabilities[i]))], "");
    }
}
