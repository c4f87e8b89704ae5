using HandsFree.Scenarios.CommandLine;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Handover;

public sealed class SpokenQuestionTests
{
    [Fact]
    public void A_spoken_question_is_answered_as_a_typed_one()
    {
        string clip = Shared.Audio("dialogue-synthetic/v002-am_eric.wav"); // who was not taken
        using TemporaryHome home = InventedHome.AfterTheRound();

        CommandRun spoken = CommandRun.Of(home, "handover", "--ask-audio", clip, "--engine", "words", "--json");

        spoken.Code.ShouldBe(0);
        spoken.Error.ShouldContain("the engine words hears");
        spoken.Out.ShouldBe(CommandRun.Of(home, "handover", "--ask", "who was not taken", "--json").Out);
    }

    [Fact]
    public void A_recording_without_a_question_is_refused()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();
        string quiet = Recordings.Quiet(home, "quiet.wav");

        CommandRun run = CommandRun.Of(home, "handover", "--ask-audio", quiet, "--engine", "words", "--json");

        run.Code.ShouldBe(2);
        run.Out.ShouldBeEmpty();
        run.Error.ShouldContain("quiet.wav: nothing, no question of the handover");
        CommandRun.Of(home, "handover", "--ask-audio", home.At("none.wav"), "--engine", "words").Error.ShouldContain("none.wav: no such file");
    }
}
