using HandsFree.Audio.Tests.Wav;

namespace HandsFree.Audio.Tests.Bad;

/// <summary>Broken files, each with the exact reason that reading it must give.</summary>
internal static class BadFiles
{
    private static readonly byte[] FourSamples = RiffBuilder.Bytes((short)1, (short)2, (short)3, (short)4);

    public static IReadOnlyDictionary<string, (byte[] Bytes, string Reason)> All { get; } = new Dictionary<string, (byte[], string)>
    {
        ["empty.wav"] = ([], "the file is empty"),
        ["text.wav"] = ("This is no sound."u8.ToArray(), "not a WAV file: begins with \"This\" instead of RIFF"),
        ["one-byte.wav"] = ([0xFF], "not a WAV file: begins with \".\" instead of RIFF"),
        ["ogg.wav"] = ("OggS\0\u0002"u8.ToArray(), "not a WAV file: begins with \"OggS\" instead of RIFF"),
        ["big-endian.wav"] = (Good().Build(riff: "RIFX"), "not a WAV file: begins with \"RIFX\" instead of RIFF"),
        ["avi.wav"] = (Good().Build(wave: "AVI "), "not a WAV file: RIFF of the kind \"AVI \""),
        ["riff-only.wav"] = ("RIFF"u8.ToArray(), "truncated inside the header"),
        ["nothing-after-wave.wav"] = (new RiffBuilder().Build(), "truncated inside the header"),
        ["chunk-head-cut.wav"] = ([.. RiffBuilder.Pcm(16_000, 1, 16).Build(), .. "dat"u8], "truncated inside the header"),
        ["format-cut.wav"] = (Good().Build()[..30], "truncated: the \"fmt \" chunk should have 16 bytes, the file has 10"),
        ["format-short.wav"] = (new RiffBuilder().Chunk("fmt ", new byte[14]).Data(FourSamples).Build(), "damaged: a \"fmt \" chunk of 14 bytes"),
        ["format-huge.wav"] = (new RiffBuilder().Chunk("fmt ", new byte[5000]).Build(), "damaged: a \"fmt \" chunk of 5000 bytes"),
        ["no-format.wav"] = (new RiffBuilder().Data(FourSamples).Build(), "the \"fmt \" chunk is missing before the samples"),
        ["no-data.wav"] = (RiffBuilder.Pcm(16_000, 1, 16).Build(), "the \"data\" chunk is missing: there are no samples"),
        ["data-cut.wav"] = (Good().Build()[..^3], "truncated: 8 bytes of samples announced, 5 are there"),
        ["data-gone.wav"] = (Good().Build()[..^8], "truncated: 8 bytes of samples announced, 0 are there"),
        ["half-a-sample.wav"] = (
            RiffBuilder.Pcm(16_000, 1, 16).Data(FourSamples[..7]).Build(),
            "damaged: 7 bytes of samples are no whole number of 2-byte sample frames"),
        ["half-a-frame.wav"] = (
            RiffBuilder.Pcm(16_000, 2, 16).Data(FourSamples[..6]).Build(),
            "damaged: 6 bytes of samples are no whole number of 4-byte sample frames"),
        ["a-law.wav"] = (Coded(6, 8), "coding A-law, 8 bits; PCM of 8, 16, 24 or 32 bits or float of 32 or 64 bits is needed"),
        ["mu-law.wav"] = (Coded(7, 8), "coding mu-law, 8 bits; PCM of 8, 16, 24 or 32 bits or float of 32 or 64 bits is needed"),
        ["mp3.wav"] = (Coded(0x55, 8), "coding MP3, 8 bits; PCM of 8, 16, 24 or 32 bits or float of 32 or 64 bits is needed"),
        ["unknown-coding.wav"] = (
            Coded(0x1234, 8), "coding 0x1234, 8 bits; PCM of 8, 16, 24 or 32 bits or float of 32 or 64 bits is needed"),
        ["extensible-a-law.wav"] = (
            new RiffBuilder().Extensible(6, 16_000, 1, 8).Data(FourSamples).Build(),
            "coding A-law, 8 bits; PCM of 8, 16, 24 or 32 bits or float of 32 or 64 bits is needed"),
        ["twelve-bits.wav"] = (
            new RiffBuilder().Format(1, 16_000, 1, 12, frameBytes: 2).Data(FourSamples).Build(),
            "coding PCM, 12 bits; PCM of 8, 16, 24 or 32 bits or float of 32 or 64 bits is needed"),
        ["extensible-cut.wav"] = (
            new RiffBuilder().Format(0xFFFE, 16_000, 1, 16).Data(FourSamples).Build(), "damaged: an extensible \"fmt \" chunk of 16 bytes"),
        ["frame-size-zero.wav"] = (
            new RiffBuilder().Format(1, 16_000, 1, 16, frameBytes: 0).Data(FourSamples).Build(),
            "damaged: sample frames of 0 bytes for 1 × 16 bits"),
        ["frame-size-wrong.wav"] = (
            new RiffBuilder().Format(1, 16_000, 1, 16, frameBytes: 4).Data(FourSamples).Build(),
            "damaged: sample frames of 4 bytes for 1 × 16 bits"),
        ["no-channel.wav"] = (RiffBuilder.Pcm(16_000, 0, 16).Data(FourSamples).Build(), "0 channels; mono or stereo is needed"),
        ["surround.wav"] = (RiffBuilder.Pcm(48_000, 6, 16).Data(new byte[12]).Build(), "6 channels; mono or stereo is needed"),
        ["rate-zero.wav"] = (RiffBuilder.Pcm(0, 1, 16).Data(FourSamples).Build(), "sample rate 0 Hz; 8000 to 48000 Hz is needed"),
        ["rate-low.wav"] = (RiffBuilder.Pcm(7_999, 1, 16).Data(FourSamples).Build(), "sample rate 7999 Hz; 8000 to 48000 Hz is needed"),
        ["rate-high.wav"] = (RiffBuilder.Pcm(96_000, 1, 16).Data(FourSamples).Build(), "sample rate 96000 Hz; 8000 to 48000 Hz is needed"),
        ["not-a-number.wav"] = (Floats(0, float.NaN), "damaged: sample 1 is not a finite number"),
        ["infinite.wav"] = (Floats(0, 0.5f, float.NegativeInfinity), "damaged: sample 2 is not a finite number"),
        ["float-of-another-scale.wav"] = (Floats(0, 12_345.5f), "sample 1 is 12345.5; float samples between -1 and 1 are needed"),
        ["eleven-minutes.wav"] = (
            RiffBuilder.Pcm(8_000, 1, 8).Data(new byte[11 * 60 * 8_000]).Build(), "too long: 11.0 minutes; at most 10 are read"),
    };

    private static RiffBuilder Good() => RiffBuilder.Pcm(16_000, 1, 16).Data(FourSamples);

    private static byte[] Coded(ushort coding, int bits) => new RiffBuilder().Format(coding, 16_000, 1, bits).Data(FourSamples).Build();

    private static byte[] Floats(params float[] values) =>
        RiffBuilder.Float(16_000, 1, 32).Data([.. values.SelectMany(BitConverter.GetBytes)]).Build();
}
