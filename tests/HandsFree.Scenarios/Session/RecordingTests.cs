using System.Globalization;
using System.Text;
using HandsFree.App.Homes;
using HandsFree.App.Recordings;
using HandsFree.App.Unlocking;
using HandsFree.Audio.Wav;
using HandsFree.Core.Journal;
using HandsFree.Scenarios.CommandLine;
using Microsoft.Extensions.Time.Testing;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Session;

/// <summary>Recordings: off unless the home's file says so, sealed, and gone after their days.</summary>
public sealed class RecordingTests
{
    private const string Approved = """{ "timeZone": "America/Chicago", "keepAudio": { "approvedBy": "Dora Head", "approvedOn": "2026-02-01", "days": 7 } }""";

    [Fact]
    public void None_is_kept_unless_the_homes_file_says_so_with_a_name_and_a_day()
    {
        using TemporaryHome home = InventedHome.New();
        using HomeJournal journal = Open(home, CommandRun.Now);
        SessionRecorder.For(HomeOf(home), journal).ShouldBeNull();
        CommandRun.Of(home, "journal", "audio", "list").Out.ShouldContain("No recordings are kept");
        home.With("home.json", """{ "keepAudio": { "days": 7 } }""");
        CommandRun refused = CommandRun.Of(home, "journal", "audio", "list");
        refused.Code.ShouldBe(2);
        refused.Error.ShouldContain("approvedBy");
        home.With("home.json", """{ "keepAudio": { "approvedBy": "Dora Head", "approvedOn": "2026-02-30" } }""");
        CommandRun.Of(home, "journal", "audio", "list").Error.ShouldContain("there is no such day");
    }

    [Fact]
    public void What_was_said_for_a_reading_is_kept_sealed_linked_to_it_and_comes_back_as_it_was()
    {
        using TemporaryHome home = InventedHome.New().With("home.json", Approved);
        float[] said = [.. Enumerable.Range(0, 16_000).Select(i => MathF.Sin(i / 20f) / 2)];
        AudioKept kept = Kept(home, said);

        kept.For.ShouldBe("s-1");
        (kept.Until - CommandRun.Now).TotalDays.ShouldBe(7, 0.01);
        string file = Directory.GetFiles(home.Folder.AudioFolder).ShouldHaveSingleItem();
        Path.GetFileNameWithoutExtension(file).ShouldBe(kept.Clip);
        byte[] bytes = File.ReadAllBytes(file);
        bytes.AsSpan().IndexOf("RIFF"u8).ShouldBe(-1);
        Encoding.ASCII.GetString(bytes, 0, 4).ShouldBe("HFA2");
        CommandRun list = CommandRun.Of(home, "journal", "audio", "list");
        list.Code.ShouldBe(0, list.Error);
        list.Out.ShouldContain("approved by Dora Head, 2026-02-01");
        list.Out.ShouldContain($"{kept.Clip}  2026-03-03 10:30:00  1.0 s  for s-1");

        string wav = home.At("out.wav");
        CommandRun.Of(home, "journal", "audio", "play-to-file", kept.Clip, wav).Code.ShouldBe(0);
        WavReader.Read(wav).Clip!.Samples.Zip(said, (a, b) => Math.Abs(a - b)).Max().ShouldBeLessThan(1e-4f);
        CommandRun.Of(home, "journal", "audio", "play-to-file", kept.Clip, wav).Error.ShouldContain("nothing is overwritten");
        CommandRun.Of(home, "journal", "audio", "play-to-file", "../journal", home.At("x.wav")).Error.ShouldContain("no such recording");
    }

    [Theory]
    [InlineData(2)] // the letters
    [InlineData(8)] // the day
    [InlineData(20)] // the salt
    [InlineData(500)] // the sound
    public void A_recording_that_was_changed_or_moved_does_not_open(int at)
    {
        using TemporaryHome home = InventedHome.New().With("home.json", Approved);
        AudioKept kept = Kept(home, new float[1600]);
        string file = Directory.GetFiles(home.Folder.AudioFolder).ShouldHaveSingleItem();
        byte[] bytes = File.ReadAllBytes(file);
        using HomeJournal journal = Open(home, CommandRun.Now);
        string other = string.Concat(Enumerable.Repeat("ab", 16));
        File.WriteAllBytes(Path.Combine(home.Folder.AudioFolder, other + ".hfa"), bytes);
        journal.Recordings.Open(other).ShouldBeNull();
        journal.Recordings.Open(kept.Clip).ShouldNotBeNull();
        bytes[at] ^= 1;
        File.WriteAllBytes(file, bytes);
        journal.Recordings.Open(kept.Clip).ShouldBeNull();
    }

    [Fact]
    public void When_its_days_are_over_it_is_deleted_at_the_next_opening_and_that_is_an_event()
    {
        using TemporaryHome home = InventedHome.New().With("home.json", Approved);
        AudioKept kept = Kept(home, new float[1600]);
        Open(home, CommandRun.Now.AddDays(6.9)).Dispose();
        Directory.GetFiles(home.Folder.AudioFolder).Length.ShouldBe(1);

        using HomeJournal journal = Open(home, CommandRun.Now.AddDays(7.1));

        Directory.GetFiles(home.Folder.AudioFolder).ShouldBeEmpty();
        AudioDeleted deleted = journal.All().OfType<AudioDeleted>().Where(d => d.Clip == kept.Clip).ShouldHaveSingleItem();
        deleted.Why.ShouldBe("its days are over");
    }

    [Fact]
    public void All_can_be_deleted_at_once_and_one_that_vanished_is_found()
    {
        using TemporaryHome home = InventedHome.New().With("home.json", Approved);
        Kept(home, new float[1600]);
        CommandRun.Of(home, "journal", "audio", "purge").Out.ShouldContain("1 recordings are kept");
        CommandRun.Of(home, "journal", "audio", "purge", "--all").Out.ShouldContain("1 recordings deleted");
        CommandRun.Of(home, "journal", "audio", "list").Code.ShouldBe(0);
        CommandRun.Of(home, "journal", "list").Out.ShouldContain("recording deleted by device");

        Kept(home, new float[1600]);
        File.Delete(Directory.GetFiles(home.Folder.AudioFolder).Single());
        CommandRun list = CommandRun.Of(home, "journal", "audio", "list");
        list.Code.ShouldBe(1);
        list.Out.ShouldContain("MISSING");
    }

    [Fact]
    public void What_led_to_nothing_is_not_on_the_disk()
    {
        using TemporaryHome home = InventedHome.New().With("home.json", Approved);
        using HomeJournal journal = Open(home, CommandRun.Now);
        SessionRecorder recorder = SessionRecorder.For(HomeOf(home), journal)!;
        recorder.Heard(CommandRun.Now, new float[1600]);
        recorder.Saved([new RoundEnded("s-9", "aide-7", CommandRun.Now)]).ShouldBeNull();
        Directory.GetFiles(home.Folder.AudioFolder).ShouldBeEmpty();
    }

    private static AudioKept Kept(TemporaryHome home, float[] said)
    {
        using HomeJournal journal = Open(home, CommandRun.Now);
        int number = journal.All().OfType<ReadingRecorded>().Count() + 1;
        ReadingRecorded reading = InventedHome.Pulse(string.Create(CultureInfo.InvariantCulture, $"s-{number}"), "r1", 72, CommandRun.Now);
        journal.Events.Append(reading);
        SessionRecorder recorder = SessionRecorder.For(HomeOf(home), journal)!;
        recorder.Heard(CommandRun.Now.AddSeconds(-9), new float[10]);
        recorder.Heard(CommandRun.Now, said);

        // The invented yes was said in the same moment: it is the same sound, kept once for each saying.
        recorder.Saved([reading]).ShouldBeNull();
        AudioKept[] all = [.. journal.All().OfType<AudioKept>().Where(k => k.For == reading.Id)];
        journal.Recordings.Delete(all[1].Clip);
        journal.Desk.Write((id, at) => new AudioDeleted(id, "test", at, all[1].Clip, "the test needs one"));
        return all[0];
    }

    private static Home HomeOf(TemporaryHome home) => Home.Open(home.Folder, TimeZoneInfo.Utc).Home!;

    private static HomeJournal Open(TemporaryHome home, DateTimeOffset now) =>
        HomeJournal.Open(home.Folder, new Unlocker(CommandRun.Quiet with { Time = new FakeTimeProvider(now) }, null)).Journal!;
}
