using HandsFree.Audio.Tests.Bad;
using HandsFree.Audio.Wav;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Wav;

public sealed class WavWriterTests
{
    [Fact]
    public void What_was_written_is_read_back_to_the_nearest_step()
    {
        float[] samples = [0f, 0.5f, -0.5f, 1f / 32768, 0.6f / 32768, -1f, 32767f / 32768];
        using TemporaryFile file = new("written.wav", [1, 2, 3]);

        WavWriter.Write(file.Path, samples);

        AudioClip clip = WavReader.Read(file.Path).Clip.ShouldNotBeNull();
        clip.Samples.ShouldBe([0f, 0.5f, -0.5f, 1f / 32768, 1f / 32768, -1f, 32767f / 32768]);
        (clip.SourceRate, clip.SourceChannels, clip.SourceBits).ShouldBe((16_000, 1, 16));
    }

    [Fact]
    public void Samples_over_full_scale_are_clipped()
    {
        using TemporaryFile file = new("loud.wav", []);

        WavWriter.Write(file.Path, [1f, 2f, -2f]);

        WavReader.Read(file.Path).Clip.ShouldNotBeNull().Samples.ShouldBe([32767f / 32768, 32767f / 32768, -1f]);
    }

    [Fact]
    public void Nothing_is_written_as_a_file_without_samples()
    {
        using TemporaryFile file = new("nothing.wav", []);

        WavWriter.Write(file.Path, []);

        WavReader.Read(file.Path).Clip.ShouldNotBeNull().Samples.ShouldBeEmpty();
    }
}
