using System.Text.Json;
using HandsFree.App.Checks;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.CommandLine;

public sealed class CheckCommandTests
{
    [Fact]
    public void The_self_test_hears_the_recording_that_the_program_carries()
    {
        using TemporaryHome home = InventedHome.AfterTheRound();

        CommandRun run = CommandRun.Of(home, "check", "--engine", "words", "--json", "--sound", "none");

        JsonElement json = JsonDocument.Parse(run.Lines.ShouldHaveSingleItem()).RootElement;
        json.GetProperty("ok").GetBoolean().ShouldBeTrue();
        json.GetProperty("engine").GetString().ShouldBe("words");
        Dictionary<string, string?> states = json.GetProperty("checks").EnumerateArray()
            .ToDictionary(check => check.GetProperty("name").GetString()!, check => check.GetProperty("state").GetString());
        states.Keys.ShouldBe(["engine", "recording", "detector", "voice", "home", "folder", "disk", "journal", "people", "microphone", "loudspeaker"]);
        states["recording"].ShouldBe("ok");
        states["engine"].ShouldBe("ok");
        states["journal"].ShouldBe("ok");
        run.Code.ShouldBe(0);
    }

    [Fact]
    public void Without_any_sound_device_the_answer_is_clear_and_names_the_way_on()
    {
        using TemporaryHome home = InventedHome.New();

        CommandRun run = CommandRun.Of(home, "check", "--engine", "words", "--sound", "none");

        run.Lines.ShouldContain("warning  microphone: sound is switched off by choice; a round by keys needs none: handsfree round --keys");
        run.Lines.ShouldContain("warning  loudspeaker: none; what is said is shown");
        run.Code.ShouldBe(0, run.Out);
    }

    [Fact]
    public void A_broken_home_and_an_engine_that_is_not_there_fail_the_self_test()
    {
        using TemporaryHome home = InventedHome.New().With("home.json", """{ "units": { "weight": "stone" } }""");

        CommandRun run = CommandRun.With(
            home, s => s with { Variable = name => name is "HANDSFREE_TOOLS" or "HANDSFREE_MODELS" ? home.Path : s.Variable(name) }, "check", "--engine", "vosk", "--sound", "none");

        run.Code.ShouldBe(1);
        run.Out.ShouldContain("failed   engine: the engine vosk that --engine asks for can't hear here");
        run.Out.ShouldContain("home.json(1): \"units.weight\" is \"stone\"");
        run.Out.ShouldContain("warning  detector: speech is detected by its energy");
        run.ErrorLines.ShouldHaveSingleItem().ShouldStartWith("handsfree: check failed");
    }

    [Fact]
    public void The_recording_that_the_program_carries_is_two_seconds_of_sound()
    {
        BundledClip.Read().Duration.TotalSeconds.ShouldBeInRange(1, 4);
    }
}
