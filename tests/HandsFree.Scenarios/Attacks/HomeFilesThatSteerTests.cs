using HandsFree.Scenarios.CommandLine;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Attacks;

/// <summary>The attack: a home's own files, edited, with names and rules that steer the terminal or turn the direction of writing.</summary>
public sealed class HomeFilesThatSteerTests
{
    [Theory]
    [InlineData("home.json", """{ "name": "All is w\u202ell" }""")]
    [InlineData("home.json", """{ "aide": "aide\u001b[2J" }""")]
    [InlineData("home.json", """{ "na\u200bme": "x" }""")]
    [InlineData("roster.json", """{ "residents": [{ "id": "r\u00ad1", "name": "Ada", "room": 12, "born": "1931-03-09" }] }""")]
    [InlineData("roster.json", """{ "residents": [{ "id": "r1", "name": "Ada", "room": 12, "born": "1931-03-09", "isolation": "con\u0007tact" }] }""")]
    [InlineData("rules.json", """{ "home": "x\u2066", "override": [] }""")]
    public void The_home_is_not_opened_and_the_line_is_named(string file, string content)
    {
        using TemporaryHome home = InventedHome.New().With(file, content);

        CommandRun run = CommandRun.Of(home, "handover", "--ask", "handover");

        run.Code.ShouldBe(2);
        run.Error.ShouldContain($"{file}(1): the text \"");
        Steering.Steers(run.Error).ShouldBeFalse();
    }

    [Fact]
    public void The_sound_settings_too()
    {
        using TemporaryHome home = InventedHome.New();
        Directory.CreateDirectory(home.States);
        File.WriteAllText(Path.Combine(home.States, "sound.json"), "{ \"microphone\": \"head\\u001b]0;set\\u0007\" }");

        CommandRun.Of(home, "devices").Error.ShouldContain("sound.json(1): the text \"");
    }
}
