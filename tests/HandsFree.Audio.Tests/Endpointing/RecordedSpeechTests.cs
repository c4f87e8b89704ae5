using HandsFree.Audio.Endpointing;
using HandsFree.Audio.Noise;
using HandsFree.Audio.Wav;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Endpointing;

public sealed class RecordedSpeechTests
{
    /// <summary>Every so many of the longer recordings; those of a single word, below 1.2 s, are all taken.</summary>
    private const int Every = 40;

    public static TheoryData<string, string> All => new MatrixTheoryData<string, string>(
        ["silero", "energy"], ["an4-numbers", "an4-spelled", "dictation-synthetic", "dialogue-synthetic"]);

    [Theory]
    [MemberData(nameof(All))]
    public void Speech_is_found_in_every_recording(string detectorName, string folder)
    {
        using ISpeechDetector detector = Detectors.Open(detectorName);
        foreach ((string file, float[] samples) in Clips(folder))
        {
            SpeechSegment segment = WholeFileSegmenter.Segment(detector, samples).ShouldNotBeNull(file);

            segment.Samples.Length.ShouldBeGreaterThanOrEqualTo(16_000, file);
            (segment.SpeechStart - segment.Position).ShouldBeGreaterThanOrEqualTo(6_400, file);
            segment.Level.RmsDbfs.ShouldBeInRange(-50, -5, file);
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Recordings_cut_to_the_speech_itself_still_have_speech(string detectorName, string folder)
    {
        using ISpeechDetector detector = Detectors.Open(detectorName);
        foreach ((string file, float[] samples) in Clips(folder))
        {
            SpeechSegment whole = WholeFileSegmenter.Segment(detector, samples).ShouldNotBeNull(file);
            float[] tight = samples[(int)whole.SpeechStart..(int)whole.SpeechEnd];

            WholeFileSegmenter.Segment(detector, tight).ShouldNotBeNull(file);
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void In_pink_noise_20_dB_below_the_speech_it_is_found_all_the_same(string detectorName, string folder)
    {
        using ISpeechDetector detector = Detectors.Open(detectorName);
        foreach ((string file, float[] samples) in Clips(folder))
        {
            float[] noisy = Mixer.AddNoise(samples, PinkNoise.Make(samples.Length, 6, -40), 20);
            int count = 0;
            detector.Reset();
            Endpointer endpointer = new(detector, new EndpointerOptions(), e => count += e is EndpointEvent.SpeechEnded ? 1 : 0);

            endpointer.Feed(noisy);
            endpointer.Flush();

            count.ShouldBeGreaterThan(0, file);
        }
    }

    private static IEnumerable<(string File, float[] Samples)> Clips(string folder)
    {
        string[] files = [.. Directory.GetFiles(Shared.Audio(folder), "*.wav").Order(StringComparer.Ordinal)];
        files.ShouldNotBeEmpty();
        for (int i = 0; i < files.Length; i++)
        {
            bool isWord = new FileInfo(files[i]).Length < 1.2 * 32_000;
            if (isWord || i % Every == 0)
            {
                yield return (Path.GetFileName(files[i]), WavReader.Read(files[i]).Clip.ShouldNotBeNull(files[i]).Samples);
            }
        }
    }
}
