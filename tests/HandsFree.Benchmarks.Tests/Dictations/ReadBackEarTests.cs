using HandsFree.Benchmarks.Dictations.Playing;
using HandsFree.Benchmarks.Dictations.Saying;
using Shouldly;
using Xunit;

namespace HandsFree.Benchmarks.Tests.Dictations;

/// <summary>The aide understands read-backs and questions by their words; each is written out by hand here.</summary>
public sealed class ReadBackEarTests
{
    [Theory]
    [InlineData("Pulse, seven two", "pulse 72")]
    [InlineData("Pulse, four four in thirty seconds, makes eight eight, uneven", "pulse 88 (uneven)")]
    [InlineData("Respirations, one six in sixty seconds", "respirations 16")]
    [InlineData("Temperature, nine eight point six Fahrenheit, mouth", "temperature 98.6 Fahrenheit (mouth)")]
    [InlineData("Blood pressure, one one eight over seven six, left arm, sitting", "blood pressure 118/76 (left arm, sitting)")]
    [InlineData("Oxygen, nine six percent, on two litres", "oxygen 96 (on two litres)")]
    [InlineData("Weight, one five four point three pounds", "weight 154.3 pounds")]
    public void A_read_back_is_understood(string sentence, string meant) => ReadBackEar.Understand(sentence)!.ToString().ShouldBe(meant);

    [Theory]
    [InlineData("Saved")]
    [InlineData("Pulse, two eight zero, is not possible")]
    [InlineData("Pulse is left open")]
    [InlineData("Blood pressure, refused")]
    public void Other_sentences_read_nothing_back(string sentence)
    {
        Measured? understood = ReadBackEar.Understand(sentence);
        (understood is null || understood.Ways.Contains("not possible", StringComparison.Ordinal)).ShouldBeTrue($"{understood}");
    }

    [Theory]
    [InlineData("Room and bed?", "Place")]
    [InlineData("Ada Quill? Look first.", "Name")]
    [InlineData("Day and month of birth?", "Birthday")]
    [InlineData("Pulse, seven two.", "Confirmation")]
    [InlineData("I heard nothing. Pulse, seven two. Is that what you said?", "Confirmation")]
    [InlineData("Pulse, seven two. Say the number again, digit by digit.", "SayingAgain")]
    [InlineData("Agreeing is not enough. Pulse, seven two. Say it once more. Example: seven two.", "SayingAgain")]
    [InlineData("Not sure. Say the digits, one by one.", "Digits")]
    [InlineData("Say the blood pressure.", "Value")]
    [InlineData("Blood pressure, refused.", "NotTaken")]
    [InlineData("Please answer. Taken since you came back? Say yes or before.", "JustNow")]
    [InlineData("Short of breath?", "Symptom")]
    [InlineData("How many?", "Count")]
    [InlineData("(CountBegins)", "Counting")]
    [InlineData("(CountEnds)", "Count")]
    [InlineData("Temperature, two six point four Celsius, is not possible. Temperature is left open.", "Nothing")]
    [InlineData("Saved.", "Nothing")]
    [InlineData("Again: Pulse, seven two.", "Confirmation")]
    public void A_question_is_understood(string text, string wants) => $"{Prompt.Of(text).Wants}".ShouldBe(wants);

    [Fact]
    public void What_follows_saved_is_an_instruction()
    {
        Prompt prompt = Prompt.Of("Saved. Tell the nurse before you leave. Let the resident rest five minutes, back and arm supported, then measure again.");
        prompt.Saved.ShouldBeTrue();
        prompt.Instruction.ShouldBe("Let the resident rest five minutes, back and arm supported, then measure again.");
    }

    [Fact]
    public void What_nobody_knows_is_told() => Prompt.Of("The moon is full.").Strange.ShouldBe(["The moon is full."]);
}
