using HandsFree.Audio.Wav;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Wav;

public sealed class WavReaderTests
{
    private const double Step24 = 1.0 / 8_388_608;

    [Fact]
    public void Eight_bits_are_unsigned_with_128_as_zero() =>
        Samples(RiffBuilder.Pcm(16_000, 1, 8).Data([128, 0, 255, 192])).ShouldBe([0f, -1f, 127f / 128, 0.5f]);

    [Fact]
    public void Sixteen_bits_are_signed() =>
        Samples(RiffBuilder.Pcm(16_000, 1, 16).Data(RiffBuilder.Bytes((short)0, (short)-32768, (short)32767, (short)16384)))
            .ShouldBe([0f, -1f, 32767f / 32768, 0.5f]);

    [Fact]
    public void Twenty_four_bits_are_signed_with_the_least_byte_first() =>
        Samples(RiffBuilder.Pcm(16_000, 1, 24).Data([0, 0, 0, 0, 0, 0x80, 0xFF, 0xFF, 0x7F, 1, 0, 0, 0, 0, 0xC0]))
            .ShouldBe([0f, -1f, (float)(1 - Step24), (float)Step24, -0.5f]);

    [Fact]
    public void Thirty_two_bits_are_signed() =>
        Samples(RiffBuilder.Pcm(16_000, 1, 32).Data(RiffBuilder.Bytes(0, int.MinValue, 1 << 30))).ShouldBe([0f, -1f, 0.5f]);

    [Fact]
    public void Floats_are_taken_as_they_are_and_clipped_a_little_over_full_scale() =>
        Samples(RiffBuilder.Float(16_000, 1, 32).Data(RiffBuilder.Bytes(0.25f, -0.75f, 1.5f, -3f))).ShouldBe([0.25f, -0.75f, 1f, -1f]);

    [Fact]
    public void Floats_of_64_bits_are_read() =>
        Samples(RiffBuilder.Float(16_000, 1, 64).Data(RiffBuilder.Bytes(0.25, -0.75))).ShouldBe([0.25f, -0.75f]);

    [Fact]
    public void Stereo_becomes_the_mean_of_both() =>
        Samples(RiffBuilder.Pcm(16_000, 2, 16).Data(RiffBuilder.Bytes((short)16384, (short)0, (short)-16384, (short)-32768)))
            .ShouldBe([0.25f, -0.75f]);

    [Theory]
    [InlineData(1, 16)]
    [InlineData(1, 24)]
    [InlineData(1, 32)]
    [InlineData(3, 32)]
    [InlineData(3, 64)]
    public void The_extensible_form_is_read_as_what_it_extends(int coding, int bits)
    {
        byte[] data = Enumerable.Range(0, 48 * bits / 8).Select(i => coding == 3 ? (byte)0 : (byte)(i * 7)).ToArray();

        float[] extensible = Samples(new RiffBuilder().Extensible((ushort)coding, 16_000, 2, bits).Data(data));
        float[] plain = Samples(new RiffBuilder().Format((ushort)coding, 16_000, 2, bits).Data(data));

        extensible.Length.ShouldBe(24);
        extensible.ShouldBe(plain);
    }

    [Fact]
    public void The_clip_says_how_it_was_stored()
    {
        AudioClip clip = Clip(RiffBuilder.Pcm(44_100, 2, 24).Data(new byte[44_100 * 6]));

        clip.SourceRate.ShouldBe(44_100);
        clip.SourceChannels.ShouldBe(2);
        clip.SourceBits.ShouldBe(24);
        clip.Samples.Length.ShouldBe(16_000);
        clip.Duration.ShouldBe(TimeSpan.FromSeconds(1));
    }

    [Fact]
    public void A_file_without_samples_is_a_clip_with_nothing_in_it() =>
        Samples(RiffBuilder.Pcm(44_100, 1, 16).Data([])).ShouldBeEmpty();

    [Fact]
    public void A_file_without_samples_but_with_a_list_behind_them_is_empty() =>
        Samples(RiffBuilder.Pcm(16_000, 1, 16).Data([]).Chunk("LIST", new byte[20])).ShouldBeEmpty();

    [Theory]
    [InlineData(0u, 0u)]
    [InlineData(0u, 36u)]
    [InlineData(0u, 0xFFFFFFFFu)]
    [InlineData(0xFFFFFFFFu, 0xFFFFFFFFu)]
    [InlineData(0xFFFFFFFFu, 0u)]
    public void A_header_written_before_the_length_was_known_takes_all_that_follows(uint dataLength, uint riffLength)
    {
        byte[] bytes = RiffBuilder.Pcm(16_000, 1, 16).Data(RiffBuilder.Bytes((short)16384, (short)-16384), dataLength).Build(riffLength);

        Samples(bytes).ShouldBe([0.5f, -0.5f]);
        Samples([.. bytes, 1]).ShouldBe([0.5f, -0.5f]);
    }

    [Fact]
    public void Chunks_before_and_after_the_samples_are_passed_over()
    {
        byte[] bytes = new RiffBuilder().Chunk("JUNK", new byte[13]).Format(1, 16_000, 1, 16).Chunk("LIST", new byte[7])
            .Data(RiffBuilder.Bytes((short)16384)).Chunk("id3 ", new byte[9]).Build();

        Samples(bytes).ShouldBe([0.5f]);
    }

    [Fact]
    public void A_cut_in_a_chunk_behind_the_samples_does_no_harm()
    {
        byte[] bytes = RiffBuilder.Pcm(16_000, 1, 16).Data(RiffBuilder.Bytes((short)16384)).Chunk("LIST", new byte[20]).Build();

        Samples(bytes[..^10]).ShouldBe([0.5f]);
    }

    [Fact]
    public void An_odd_number_of_bytes_without_the_padding_byte_is_read() =>
        Samples(RiffBuilder.Pcm(16_000, 1, 8).Data([128, 192, 64]).Build()[..^1]).ShouldBe([0f, 0.5f, -0.5f]);

    [Fact]
    public void A_stream_is_read_from_where_it_stands_and_left_open()
    {
        byte[] bytes = RiffBuilder.Pcm(16_000, 1, 16).Data(RiffBuilder.Bytes((short)16384)).Build();
        using MemoryStream stream = new([.. new byte[5], .. bytes]) { Position = 5 };

        WavReader.Read(stream, "stream").Clip.ShouldNotBeNull().Samples.ShouldBe([0.5f]);

        stream.CanRead.ShouldBeTrue();
    }

    private static float[] Samples(RiffBuilder file) => Samples(file.Build());

    private static float[] Samples(byte[] bytes) => Clip(bytes).Samples;

    private static AudioClip Clip(RiffBuilder file) => Clip(file.Build());

    private static AudioClip Clip(byte[] bytes)
    {
        WavResult result = WavReader.Read(new MemoryStream(bytes), "test.wav");
        result.Error.ShouldBeNull();
        return result.Clip.ShouldNotBeNull();
    }
}
