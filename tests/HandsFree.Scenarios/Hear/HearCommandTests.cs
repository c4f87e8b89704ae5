using System.Text.Json;
using HandsFree.Scenarios.CommandLine;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Hear;

public sealed class HearCommandTests
{
    [Fact]
    public void One_object_a_line_says_what_was_heard()
    {
        using TemporaryHome home = new();
        string clip = Recordings.Pulse(home, "pulse.wav");

        CommandRun run = Words(home, "--json", clip);

        run.Code.ShouldBe(0);
        run.ErrorLines[0].ShouldBe("the engine words hears");
        JsonElement heard = JsonDocument.Parse(run.Lines.ShouldHaveSingleItem()).RootElement;
        heard.EnumerateObject().Select(field => field.Name).ShouldBe(
        [
            "file", "engine", "outcome", "meaning", "words", "probability", "margin", "runnerUp", "audioSeconds", "decodeMilliseconds",
        ]);
        heard.GetProperty("file").GetString().ShouldBe(clip);
        heard.GetProperty("engine").GetString().ShouldBe("words");
        heard.GetProperty("outcome").GetString().ShouldBe("heard");
        heard.GetProperty("meaning").GetRawText().ShouldBe("""{"kind": "pulse", "value": 85}""");
        heard.GetProperty("words").GetString().ShouldBe("pulse eighty five");
        heard.GetProperty("probability").GetDouble().ShouldBeInRange(0.5, 1);
        heard.GetProperty("audioSeconds").GetDouble().ShouldBe(2.3, 0.1);
    }

    [Fact]
    public void A_file_with_nothing_in_it_is_heard_as_nothing_and_is_no_error()
    {
        using TemporaryHome home = new();

        CommandRun run = Words(home, "--json", Recordings.Quiet(home, "quiet.wav"));

        run.Code.ShouldBe(0);
        JsonElement heard = JsonDocument.Parse(run.Lines.ShouldHaveSingleItem()).RootElement;
        heard.GetProperty("outcome").GetString().ShouldBe("nothing");
        heard.GetProperty("words").GetString().ShouldBe("");
        foreach (string empty in (string[])["meaning", "probability", "margin", "runnerUp"])
        {
            heard.GetProperty(empty).ValueKind.ShouldBe(JsonValueKind.Null);
        }
    }

    [Fact]
    public void Broken_files_are_named_with_their_reason_and_the_others_are_done_in_order()
    {
        using TemporaryHome home = new();
        string pulse = Recordings.Pulse(home, "pulse.wav");
        string quiet = Recordings.Quiet(home, "quiet.wav");
        byte[] whole = File.ReadAllBytes(pulse);
        File.WriteAllBytes(home.At("cut.wav"), whole[..(whole.Length / 2)]);
        home.With("empty.wav", "").With("letter.wav", "Dear nurse,");

        CommandRun run = Words(home, "--json", quiet, home.At("cut.wav"), home.At("empty.wav"), home.At("letter.wav"), home.At("none.wav"), pulse);

        run.Code.ShouldBe(2);
        run.Lines.Select(line => JsonDocument.Parse(line).RootElement.GetProperty("file").GetString()).ShouldBe([quiet, pulse]);
        string[] errors = [.. run.ErrorLines.Where(line => line.StartsWith("handsfree: ", StringComparison.Ordinal))];
        errors.Length.ShouldBe(4);
        errors[0].ShouldContain("cut.wav: truncated");
        errors[1].ShouldContain("empty.wav: the file is empty");
        errors[2].ShouldContain("letter.wav: ");
        errors[3].ShouldContain("none.wav: no such file");
    }

    [Fact]
    public void An_enormous_file_is_refused_by_its_size()
    {
        using TemporaryHome home = new();
        using (FileStream file = File.Create(home.At("enormous.wav")))
        {
            file.SetLength(300_000_000); // sparse
        }

        CommandRun run = Words(home, "--json", home.At("enormous.wav"));

        run.Code.ShouldBe(2);
        run.Out.ShouldBeEmpty();
        run.Error.ShouldContain("enormous.wav: too large: at most 200 MB are read");
    }

    [Fact]
    public void A_folder_stands_for_its_recordings_by_name()
    {
        using TemporaryHome home = new TemporaryHome().With("notes.txt", "no recording");
        Recordings.Quiet(home, "b.wav");
        Recordings.Quiet(home, "a.WAV");

        CommandRun run = Words(home, "--json", home.Path);

        run.Code.ShouldBe(0);
        run.Lines.Select(line => JsonDocument.Parse(line).RootElement.GetProperty("file").GetString()).ShouldBe([home.At("a.WAV"), home.At("b.wav")]);
    }

    [Fact]
    public void A_folder_without_recordings_is_refused()
    {
        using TemporaryHome home = new();

        CommandRun run = Words(home, home.Path);

        run.Code.ShouldBe(2);
        run.Error.ShouldContain("there is no .wav file in this folder");
    }

    [Fact]
    public void Without_JSON_there_is_one_readable_line_a_file()
    {
        using TemporaryHome home = new();

        CommandRun run = Words(home, Recordings.Pulse(home, "pulse.wav"), Recordings.Quiet(home, "quiet.wav"));

        run.Lines.Length.ShouldBe(3);
        run.Lines[0].ShouldBe("the engine words hears");
        run.Lines[1].ShouldContain("pulse.wav: \"pulse eighty five\" {\"kind\": \"pulse\", \"value\": 85} (probability ");
        run.Lines[2].ShouldEndWith("quiet.wav: nothing (2.0 s of audio, 0 ms)");
    }

    [Fact]
    public void A_grammar_of_one_s_own_decides_what_is_heard()
    {
        using TemporaryHome home = new TemporaryHome().With("own.jsgf", "#JSGF V1.0;\ngrammar own;\npublic <own> = pulse eighty five | go away;\n");

        JsonElement heard = JsonDocument.Parse(Words(home, "--json", "--grammar", home.At("own.jsgf"), Recordings.Pulse(home, "pulse.wav")).Out).RootElement;

        heard.GetProperty("words").GetString().ShouldBe("pulse eighty five");
        heard.GetProperty("meaning").GetString().ShouldBe("pulse 85"); // without tags a sentence means its words, numbers in figures
    }

    [Theory]
    [InlineData("#JSGF V1.0;\ngrammar own;\npublic <own> = one | ;\n", "own.jsgf:3:")]
    [InlineData("#JSGF V1.0;\ngrammar own;\npublic <own> = one <two>;\n", "own.jsgf:3:")]
    [InlineData("", "own.jsgf")]
    public void A_broken_grammar_is_named_with_its_place_before_anything_is_heard(string grammar, string says)
    {
        using TemporaryHome home = new TemporaryHome().With("own.jsgf", grammar);

        CommandRun run = CommandRun.Of(home, "hear", "--grammar", home.At("own.jsgf"), home.At("none.wav"));

        run.Code.ShouldBe(2);
        run.Out.ShouldBeEmpty();
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain(says);
    }

    [Fact]
    public void A_word_that_the_engine_can_t_know_is_refused_by_name()
    {
        using TemporaryHome home = new TemporaryHome().With("own.jsgf", "#JSGF V1.0;\ngrammar own;\npublic <own> = xqzzv;\n");

        CommandRun run = Words(home, "--grammar", home.At("own.jsgf"), Recordings.Quiet(home, "quiet.wav"));

        run.Code.ShouldBe(2);
        run.Error.ShouldContain("xqzzv");
    }

    private static CommandRun Words(TemporaryHome home, params string[] args) => CommandRun.Of(home, ["hear", "--engine", "words", .. args]);
}
