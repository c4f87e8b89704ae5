using HandsFree.App.Hearing;
using HandsFree.App.Composition;
using HandsFree.Scenarios.CommandLine;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Hear;

public sealed class EngineChoiceTests
{
    [Fact]
    public void Without_any_model_the_built_in_engine_hears()
    {
        using TemporaryHome empty = new();

        EngineChoice choice = new Engines(Paths(empty.Path)).Start(null, "", 1);
        using var recognizer = choice.Recognizer;

        recognizer.ShouldNotBeNull().Name.ShouldBe("words");
        choice.Line.ShouldBe("the engine words hears");
    }

    [Fact]
    public void An_engine_that_is_asked_for_and_not_there_is_never_replaced_by_another()
    {
        using TemporaryHome home = new TemporaryHome().With("home.json", """{ "engine": "vosk" }""");

        CommandRun named = CommandRun.With(home, s => Without(s, home), "hear", home.At("a.wav"), "--engine", "vosk");
        CommandRun configured = CommandRun.With(home, s => Without(s, home), "hear", home.At("a.wav"));

        named.Code.ShouldBe(2);
        named.ErrorLines.ShouldHaveSingleItem().ShouldContain("the engine vosk that --engine asks for can't hear here");
        configured.Code.ShouldBe(2);
        configured.ErrorLines.ShouldHaveSingleItem().ShouldContain($"the engine vosk that {home.At("home.json")} asks for can't hear here");
    }

    [Fact]
    public void The_home_s_file_chooses_the_engine()
    {
        using TemporaryHome home = new TemporaryHome().With("home.json", """{ "engine": "words" }""");

        CommandRun run = CommandRun.Of(home, "hear", Recordings.Quiet(home, "quiet.wav"));

        run.Lines[0].ShouldBe("the engine words hears");
    }

    [Fact]
    public void The_built_in_engine_hears_a_reading()
    {
        using TemporaryHome home = new();

        CommandRun run = CommandRun.Of(home, "hear", Recordings.Pulse(home, "pulse.wav"));

        run.Lines[0].ShouldBe("the engine words hears");
        run.Lines[1].ShouldContain("{\"kind\": \"pulse\", \"value\": 85}");
    }

    private static Surroundings Without(Surroundings s, TemporaryHome home) =>
        s with { Variable = name => name is "HANDSFREE_TOOLS" or "HANDSFREE_MODELS" ? home.At("nothing") : s.Variable(name) };

    private static ProgramPaths Paths(string folder) => new(new Surroundings
    {
        In = TextReader.Null,
        Out = TextWriter.Null,
        Error = TextWriter.Null,
        Time = TimeProvider.System,
        Variable = name => name is "HANDSFREE_TOOLS" or "HANDSFREE_MODELS" ? folder : null,
    });
}
