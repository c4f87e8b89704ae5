using HandsFree.App.Demo.Script;
using System.Text.Json.Nodes;
using HandsFree.Audio.Wav;
using HandsFree.Scenarios.CommandLine;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Demo;

/// <summary>The demo as a check of the main job: exact, or exit code 1 and what differs.</summary>
public sealed class DemoCommandTests
{
    [Fact]
    public void The_whole_shift_is_exact()
    {
        using TemporaryHome home = new();
        CommandRun run = Run(home, Shared.Repository, "demo", "--fast", "--engine", "words");
        run.Code.ShouldBe(0, run.Out + run.Error);
        run.Lines[^1].ShouldBe("Saved: 20 readings, 1 not taken, 2 reports; exactly what was said, and nothing else.");
    }

    [Fact]
    public void Two_swapped_reading_clips_end_with_exit_code_1_and_what_differs()
    {
        using TemporaryHome home = new();
        using ShortShift shift = new();
        shift.Change(manifest =>
        {
            JsonNode first = manifest["visits"]![0]!["steps"]![0]!;
            JsonNode second = manifest["visits"]![1]!["steps"]![0]!;
            (first["say"], second["say"]) = ((string)second["say"]!, (string)first["say"]!);
        });
        CommandRun run = Run(home, shift.Root, "demo", "--fast", "--engine", "words");
        run.Code.ShouldBe(1, run.Out + run.Error);
        run.Lines.ShouldContain("Missing in the journal: resident 102: reading, pulse, 76");
        run.Lines.ShouldContain("In the journal, but not expected: resident 102: reading, pulse, 85");
    }

    [Fact]
    public void Two_files_that_changed_places_are_named_the_shift_goes_on_and_the_exit_code_is_1()
    {
        using TemporaryHome home = new();
        using ShortShift shift = new();
        string[] files = ["r048-bm_lewis.wav", "r162-am_echo.wav"];
        byte[][] contents = [.. files.Select(f => File.ReadAllBytes(Path.Combine(shift.Folder, f)))];
        File.WriteAllBytes(Path.Combine(shift.Folder, files[0]), contents[1]);
        File.WriteAllBytes(Path.Combine(shift.Folder, files[1]), contents[0]);
        CommandRun run = Run(home, shift.Root, "demo", "--fast", "--engine", "words");
        run.Code.ShouldBe(1, run.Out + run.Error);
        run.Lines.ShouldContain(l => l.StartsWith("Changed: r048-bm_lewis.wav is not the recording of the manifest", StringComparison.Ordinal));
        run.Lines.ShouldContain(l => l.StartsWith("Changed: r162-am_echo.wav", StringComparison.Ordinal));
        run.Lines.ShouldContain(l => l.Contains("  program  ", StringComparison.Ordinal) && l.EndsWith("Goodbye.", StringComparison.Ordinal));
    }

    [Fact]
    public void The_home_stays_where_home_names_it_and_other_commands_work_on_it()
    {
        using TemporaryHome home = new();
        using ShortShift shift = new();
        string record = home.At("exchange");
        CommandRun run = Run(home, shift.Root, "demo", "--fast", "--engine", "words", "--home", home.At("made-up"), "--record", record);
        run.Code.ShouldBe(0, run.Out + run.Error);
        CommandRun handover = CommandRun.With(
            home,
            s => s with { Variable = name => name == "HANDSFREE_PIN_FILE" ? Path.Combine(home.At("made-up"), "demo.pin") : s.Variable(name) },
            "handover", "--home", home.At("made-up"), "--ask", "who refused");
        handover.Code.ShouldBe(0, handover.Error);
        handover.Out.ShouldContain("Room 19: blood pressure, refused; not taken yet, temperature and respirations.");
        CommandRun.Of(home, "journal", "backup", home.At("backup.db"), "--home", home.At("made-up")).Code.ShouldBe(0);
        SealedFiles.HoldNothingOf(DemoManifest.Read(shift.Folder).Manifest!, home.At("backup.db"), home.At("state"), home.At("made-up"));
        TimeSpan both = WavReader.Read(Path.Combine(record, "exchange.wav")).Clip!.Duration;
        both.ShouldBeGreaterThan(TimeSpan.FromSeconds(60));
        WavReader.Read(Path.Combine(record, "aide.wav")).Clip!.Duration.ShouldBe(both);
        WavReader.Read(Path.Combine(record, "program.wav")).Clip!.Duration.ShouldBe(both);
        File.ReadAllText(Path.Combine(record, "exchange.txt")).ShouldContain("resident 104: not taken, blood pressure, refused");
        CommandRun second = Run(home, shift.Root, "demo", "--fast", "--engine", "words", "--home", home.At("made-up"));
        second.Code.ShouldBe(2);
        second.Error.ShouldContain("journal.db is there already");
    }

    [Fact]
    public void Without_home_nothing_is_written_into_the_users_own_home()
    {
        using TemporaryHome home = new();
        CommandRun run = Run(home, Shared.Repository, "demo", "--fast", "--engine", "vosk");
        run.Code.ShouldBe(2, run.Out);
        File.Exists(home.At("journal.db")).ShouldBeFalse();
        File.Exists(home.At("roster.json")).ShouldBeFalse();
    }

    [Theory]
    [InlineData("{", "manifest.json")]
    [InlineData("{\"about\": \"\"}", "manifest.json")]
    public void A_broken_manifest_is_refused_with_its_name(string text, string named)
    {
        using TemporaryHome home = new();
        using ShortShift shift = new();
        File.WriteAllText(Path.Combine(shift.Folder, "manifest.json"), text);
        CommandRun run = Run(home, shift.Root, "demo", "--fast");
        run.Code.ShouldBe(2);
        run.Error.ShouldContain(named);
    }

    [Fact]
    public void A_missing_recording_is_refused_with_its_name()
    {
        using TemporaryHome home = new();
        using ShortShift shift = new();
        File.Delete(Path.Combine(shift.Folder, "r048-bm_lewis.wav"));
        CommandRun run = Run(home, shift.Root, "demo", "--fast");
        run.Code.ShouldBe(2);
        run.Error.ShouldContain("r048-bm_lewis.wav");
    }

    private static CommandRun Run(TemporaryHome home, string root, params string[] args) => CommandRun.With(
        home,
        s => s with { Variable = name => name == "HANDSFREE_ROOT" ? root : s.Variable(name) },
        args);
}
