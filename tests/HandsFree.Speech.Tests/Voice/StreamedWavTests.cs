using HandsFree.Speech.Voice;
using Shouldly;
using Xunit;

namespace HandsFree.Speech.Tests.Voice;

public sealed class StreamedWavTests
{
    [Fact]
    public void The_true_lengths_are_written_into_the_head()
    {
        byte[] wav = new byte[144];
        "RIFF"u8.CopyTo(wav);
        "data"u8.CopyTo(wav.AsSpan(36));
        byte[] whole = StreamedWav.Complete(wav);
        BitConverter.ToInt32(whole, 4).ShouldBe(136);
        BitConverter.ToInt32(whole, 40).ShouldBe(100);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(20)]
    [InlineData(200)]
    public void What_is_no_wav_is_left_as_it_is(int length)
    {
        byte[] noise = [.. Enumerable.Range(0, length).Select(i => (byte)i)];
        StreamedWav.Complete([.. noise]).ShouldBe(noise);
    }
}
