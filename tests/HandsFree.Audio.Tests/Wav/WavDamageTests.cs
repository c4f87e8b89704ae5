using FsCheck.Xunit;
using HandsFree.Audio.Wav;
using Shouldly;
using Xunit;

namespace HandsFree.Audio.Tests.Wav;

public sealed class WavDamageTests
{
    private static readonly byte[] Good = RiffBuilder.Pcm(16_000, 1, 16).Chunk("LIST", new byte[6])
        .Data(RiffBuilder.Bytes((short)100, (short)-200, (short)300)).Build();

    [Property(MaxTest = 500)]
    public void Any_bytes_changed_in_a_header_give_a_clip_or_a_reason(byte[] values, int seed)
    {
        byte[] bytes = [.. Good];
        Random random = new(seed);
        foreach (byte value in values)
        {
            bytes[random.Next(bytes.Length)] = value;
        }

        WavResult result = WavReader.Read(new MemoryStream(bytes), "damaged.wav");

        (result.Clip is null).ShouldBe(result.Error is not null);
        result.Clip?.Samples.ShouldAllBe(sample => sample >= -1 && sample <= 1);
    }

    [Fact]
    public void A_file_cut_anywhere_is_refused()
    {
        for (int length = 0; length < Good.Length; length++)
        {
            WavResult result = WavReader.Read(new MemoryStream(Good[..length]), "cut.wav");

            result.IsRead.ShouldBeFalse($"{length} of {Good.Length} bytes");
            result.Error.ShouldNotBeNull().ShouldStartWith("cut.wav: ");
        }
    }
}
