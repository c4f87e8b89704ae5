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
    public void A_model_that_is_broken_is_a_reason()
    {
        using TemporaryHome models = new();
        string folder = Directory.CreateDirectory(models.At("moonshine-base-en")).FullName;
        foreach (string file in (string[])["encoder_model.ort", "decoder_model_merged.ort", "tokenizer.bin"])
        {
            File.WriteAllText(Path.Combine(folder, file), "no model");
        }

        EngineChoice choice = new Engines(Paths(models.Path)).Start("neural", "--engine", 1);

        choice.Recognizer.ShouldBeNull();
        choice.Line.ShouldContain("can't hear here: it does not load");
        choice.Line.ShouldNotContain("\n");
    }

    [Fact]
    public void An_engine_that_is_asked_for_and_not_there_is_never_replaced_by_another()
    {
        using TemporaryHome home = new TemporaryHome().With("home.json", """{ "engine": "vosk" }""");

        CommandRun named = CommandRun.With(home, s => Without(s, home), "hear", home.At("a.wav"), "--engine", "neural");
        CommandRun configured = CommandRun.With(home, s => Without(s, home), "hear", home.At("a.wav"));

        named.Code.ShouldBe(2);
        named.ErrorLines.ShouldHaveSingleItem().ShouldContain("the engine neural that --engine asks for can't hear here");
        configured.Code.ShouldBe(2);
        configured.ErrorLines.ShouldHaveSingleItem().ShouldContain($"the engine vosk that {home.At("home.json")} asks for can't hear here");
    }

    [Fact]
    public void The_home_s_file_chooses_the_engine()
    {
        SphinxHere.Needed();
        using TemporaryHome home = new TemporaryHome().With("home.json", """{ "engine": "sphinx" }""");

        CommandRun run = CommandRun.Of(home, "hear", Recordings.Quiet(home, "quiet.wav"));

        run.Lines[0].ShouldBe($"the engine sphinx hears, because {home.At("home.json")} says so");
    }

    [Fact]
    public void The_neural_engine_hears_where_its_model_is()
    {
        Shared.Model("moonshine-base-en");
        using TemporaryHome home = new();

        CommandRun run = CommandRun.Of(home, "hear", Recordings.Pulse(home, "pulse.wav"), "--engine", "neural");

        run.Lines[0].ShouldBe("the engine neural hears, because --engine says so");
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
