using HandsFree.Audio.Levels;
using HandsFree.Benchmarks.Noise;
using HandsFree.Benchmarks.Recordings;
using HandsFree.Benchmarks.Tests.Recordings;
using Shouldly;
using Xunit;

namespace HandsFree.Benchmarks.Tests.Noise;

public sealed class NoiseMakerTests
{
    // First four bytes of SHA-256 of "1\nnoise\na/b", little end first, without the sign; computed elsewhere.
    private const int SeedOfRecord = 1715045485;

    private static readonly Transcript[] Many =
        [.. Enumerable.Range(0, 60).Select(i => new Transcript("set", $"{i:00}.wav", $"speaker {i % 4}", "yes", false, null))];

    [Theory]
    [InlineData("pink", 15)]
    [InlineData("pink", 10)]
    [InlineData("babble", 15)]
    [InlineData("babble", 0)]
    public void The_noise_lies_that_far_below_the_speech_without_its_pauses(string kind, double snr)
    {
        using RecordingFolder folder = Folder();
        IReadOnlyList<Transcript> all = TranscriptTable.Read(folder.FullPath);
        float[] speech = RecordingFolder.Buzz(150);

        float[] mixed = new NoiseMaker(kind, snr, 1).Under(speech, all[0], all);

        float[] noise = [.. mixed.Select((sample, i) => sample - speech[i])];
        (SpeechLevel.ActiveDbfs(speech) - LevelMeter.RmsDbfs(noise)).ShouldBe(snr, 0.05);
    }

    [Fact]
    public void A_recording_has_the_same_noise_whatever_else_is_heard_and_in_whatever_order()
    {
        using RecordingFolder folder = Folder();
        IReadOnlyList<Transcript> all = TranscriptTable.Read(folder.FullPath);
        float[] speech = RecordingFolder.Buzz(150);

        foreach (string kind in (string[])["pink", "babble"])
        {
            float[] once = new NoiseMaker(kind, 15, 1).Under(speech, all[1], all);
            NoiseMaker busy = new(kind, 15, 1);
            busy.Under(speech, all[2], all);
            busy.Under(speech, all[1], [.. all.Reverse()]).ShouldBe(once);
            busy.Under(speech, all[2], all).ShouldNotBe(once);
            new NoiseMaker(kind, 15, 2).Under(speech, all[1], all).ShouldNotBe(once);
        }
    }

    [Fact]
    public void Only_other_speakers_babble()
    {
        foreach (Transcript of in Many)
        {
            IReadOnlyList<Transcript> talkers = NoiseMaker.Talkers(7, of, Many);

            talkers.Count.ShouldBe(12);
            talkers.ShouldBeUnique();
            talkers.ShouldAllBe(t => t.Speaker != of.Speaker);
        }
    }

    [Fact]
    public void One_speaker_alone_makes_no_babble() =>
        Should.Throw<InvalidDataException>(() => NoiseMaker.Talkers(7, Many[0], [Many[0]])).Message.ShouldContain("use --noise pink");

    [Fact]
    public void A_file_of_noise_that_is_not_there_is_named()
    {
        using RecordingFolder folder = Folder();
        IReadOnlyList<Transcript> all = TranscriptTable.Read(folder.FullPath);

        Should.Throw<InvalidDataException>(() => new NoiseMaker(Path.Combine(folder.FullPath, "x.wav"), 15, 1).Under([1], all[0], all))
            .Message.ShouldContain("x.wav");
    }

    [Fact]
    public void A_seed_belongs_to_one_recording_and_one_purpose()
    {
        int[] seeds = [ClipSeed.Of(1, "noise", "a/b"), ClipSeed.Of(2, "noise", "a/b"), ClipSeed.Of(1, "room", "a/b"), ClipSeed.Of(1, "noise", "a/c")];

        seeds.ShouldBeUnique();
        seeds.ShouldAllBe(seed => seed >= 0);
        // Results of years are compared: the seed of a recording must never change.
        seeds[0].ShouldBe(SeedOfRecord);
    }

    private static RecordingFolder Folder() => new RecordingFolder().Recording("a.wav").Recording("b.wav", 190).Recording("c.wav", 240)
        .Table("file\tspeaker\twords", "a.wav\tann\tyes", "b.wav\tbob\tno", "c.wav\tcyd\tyes");
}
