using HandsFree.App.Hearing;
using HandsFree.Benchmarks.Hearing;
using HandsFree.Benchmarks.Recordings;
using HandsFree.Benchmarks.Results;
using HandsFree.Benchmarks.Tests.Recordings;
using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using HandsFree.Speech;
using HandsFree.Speech.Scripted;
using Shouldly;
using Xunit;

namespace HandsFree.Benchmarks.Tests.Hearing;

/// <summary>From a folder to rows, with an engine that hears what it is told.</summary>
public sealed class HearingRunTests
{
    private static readonly Grammar YesNo = Grammar.Parse("#JSGF V1.0;\ngrammar yesno;\npublic <any> = yes | no;", "yesno");

    [Fact]
    public void Each_second_recording_is_heard_in_the_order_of_the_table()
    {
        using RecordingFolder folder = Folder();
        using ScriptedRecognizer engine = new([Heard("yes"), Heard("yes")]);

        HeardRow[] rows = Run(engine, folder, every: 2);

        rows.Select(r => (r.File, r.Verdict)).ShouldBe([("a.wav", Verdict.Right), ("c.wav", Verdict.WrongOther)]);
        rows.ShouldAllBe(r => r.AudioSeconds == 1 && r.SpeechSeconds > 0.375 && r.SpeechSeconds < 1.5);
        engine.Left.ShouldBe(0);
    }

    [Fact]
    public void Silence_is_not_heard_and_the_engine_not_asked()
    {
        using RecordingFolder folder = new RecordingFolder().Recording("a.wav").Table("file\tspeaker\twords", "a.wav\tann\tyes");
        Audio.Wav.WavWriter.Write(Path.Combine(folder.FullPath, "a.wav"), new float[16_000]);
        using ScriptedRecognizer engine = new([]);

        HeardRow row = Run(engine, folder, every: 1).ShouldHaveSingleItem();

        (row.Verdict, row.Outcome, row.SpeechSeconds, row.DecodeMilliseconds).ShouldBe((Verdict.NotHeard, "Nothing", 0, 0));
    }

    [Fact]
    public void What_is_wrong_is_said_before_anything_is_heard()
    {
        using RecordingFolder folder = new RecordingFolder().Recording("a.wav").Table("file\tspeaker\twords", "a.wav\tann\tyes", "b.wav\tann\tno", "c.wav\tann\tno");
        File.WriteAllText(Path.Combine(folder.FullPath, "b.wav"), "no sound");
        File.WriteAllText(Path.Combine(folder.FullPath, "c.wav"), "no sound");
        using ScriptedRecognizer engine = new([]);
        using FileHearing files = new(null);
        HearingRun run = new(engine, files, _ => (YesNo, "yesno"), new SoundMaker(null, null, 1));

        string error = Should.Throw<InvalidDataException>(() => run.Check(TranscriptTable.Read(folder.FullPath), 1)).Message;

        error.ShouldStartWith("2 recordings can't be read, the first: ");
        error.ShouldContain("b.wav");
        run.Check(TranscriptTable.Read(folder.FullPath), 3);
    }

    [Fact]
    public void A_broken_recording_ends_the_run_by_its_name()
    {
        using RecordingFolder folder = new RecordingFolder().Table("file\tspeaker\twords", "a.wav\tann\tyes");
        File.WriteAllText(Path.Combine(folder.FullPath, "a.wav"), "no sound");
        using ScriptedRecognizer engine = new([]);

        Should.Throw<InvalidDataException>(() => Run(engine, folder, every: 1)).Message.ShouldContain("a.wav");
    }

    private static RecordingFolder Folder() => new RecordingFolder().Recording("a.wav").Recording("b.wav").Recording("c.wav")
        .Table("file\tspeaker\twords", "a.wav\tann\tyes", "b.wav\tbob\tno", "c.wav\tcyd\tno");

    private static HeardRow[] Run(ScriptedRecognizer engine, RecordingFolder folder, int every)
    {
        using FileHearing files = new(null);
        return [.. new HearingRun(engine, files, _ => (YesNo, "yesno"), new SoundMaker(null, null, 1)).Hear(TranscriptTable.Read(folder.FullPath), every)];
    }

    private static Speech.Hearing Heard(string words) => new(HearingOutcome.Heard, [new(Matcher.Match(YesNo, words).Single(), words, 0.9)], words);
}
