using HandsFree.App.Checks;
using HandsFree.App.Hear;
using HandsFree.App.Hearing;
using HandsFree.Audio.Levels;
using HandsFree.Language.Grammars;
using HandsFree.Scenarios.Session;
using HandsFree.Speech.Scripted;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Checks;

public sealed class PracticeSentenceTests
{
    private static readonly Grammar Readings = new GrammarShelf(Path.Combine(Shared.Repository, "grammars")).Of("readings");

    [Fact]
    public void A_sentence_that_is_understood_at_a_good_level_is_fine() =>
        Judge(BundledClip.Read().Samples, "pulse seventy two").Text.ShouldStartWith("understood \"pulse seventy two\"; good");

    [Fact]
    public void A_quiet_one_says_where_the_microphone_belongs()
    {
        float[] quiet = BundledClip.Read().Samples;
        Gain.Apply(quiet, 0.01);

        CheckResult result = Judge(quiet, "pulse seventy two");

        result.State.ShouldBe(CheckState.Warning);
        result.Text.ShouldContain("move the microphone to a thumb's width from the mouth's corner");
    }

    [Fact]
    public void Another_value_is_not_understood() => Judge(BundledClip.Read().Samples, "pulse eighty five").Text.ShouldStartWith("not understood");

    [Fact]
    public void Silence_is_nobody() => Judge(new float[32_000], "pulse seventy two").Text.ShouldStartWith("nobody was heard");

    private static CheckResult Judge(float[] said, string heard)
    {
        using FileHearing hearing = new(null);
        using ScriptedRecognizer engine = new([Heard.In(Readings, heard)]);
        return new PracticeSentence(hearing, engine, Readings).Judge(said);
    }
}
