using System.Globalization;
using HandsFree.Audio;
using HandsFree.Audio.Effects;
using HandsFree.Audio.Levels;

namespace HandsFree.Benchmarks.Microphone;

/// <summary>What a room and a microphone do to speech. Whatever the order in which they are named, they work in the order of the way: the room,
/// then noise (not from here), then the microphone opens late, its level, clipping, offset and band.</summary>
internal sealed record MicrophoneFaults
{
    /// <summary>Each by its name, with what it takes, its usual value and range.</summary>
    public const string Help = "one or several, parted by commas: band8k, reverb[:RT60 in s, 0.6], clip[:dB over full scale, 12], level:dBFS of the "
        + "speech (-40 to 0), dc[:share of full scale, 0.1], cut[:ms of the speech's beginning, 80]";

    private const double DirectToReverberantDecibel = 0;

    /// <summary>Speech begins where it comes this near its own level, dB: weak consonants lie 20 to 25 dB below vowels (common practice, no source).</summary>
    private const double OnsetDecibel = 25;

    private const int OnsetFrame = AudioClip.SampleRate / 100;

    /// <summary>As it was written.</summary>
    public required string Text { get; init; }

    private bool NarrowBandLink { get; init; }

    private double? ReverberationTime { get; init; }

    private double? OverdriveDecibel { get; init; }

    private double? LevelDbfs { get; init; }

    private double? OffsetShare { get; init; }

    private double? CutMilliseconds { get; init; }

    /// <summary>Reads the option's text.</summary>
    /// <exception cref="InvalidDataException">An unknown name or a number outside its range.</exception>
    public static MicrophoneFaults Parse(string text) =>
        text.Split(',', StringSplitOptions.TrimEntries).Aggregate(new MicrophoneFaults { Text = text }, (faults, one) => faults.With(one));

    /// <summary>What the room does.</summary>
    /// <param name="samples">Speech, 16 kHz mono.</param>
    /// <param name="seed">Of the room.</param>
    public float[] InRoom(float[] samples, int seed) =>
        ReverberationTime is { } time ? new Room(time, DirectToReverberantDecibel, seed).Apply(samples) : samples;

    /// <summary>What the microphone does.</summary>
    /// <param name="samples">What arrives at it, noise and all.</param>
    /// <param name="onset">Sample at which the speech begins, see <see cref="Onset"/>.</param>
    public float[] AtMicrophone(float[] samples, int onset)
    {
        float[] result = CutMilliseconds is { } cut ? samples[Math.Min(samples.Length, onset + (int)(cut * AudioClip.SampleRate / 1000))..] : samples;
        result = LevelDbfs is { } level ? Converter.AtLevel(result, level) : result;
        result = OverdriveDecibel is { } over ? Converter.Clip(result, over) : result;
        result = OffsetShare is { } offset ? Converter.Offset(result, offset) : result;
        return NarrowBandLink ? NarrowBand.Apply(result) : result;
    }

    /// <summary>Where speech begins in a recording without added noise: the first 10 ms within 25 dB of its level.</summary>
    public static int Onset(ReadOnlySpan<float> samples)
    {
        double threshold = SpeechLevel.ActiveDbfs(samples) - OnsetDecibel;
        for (int at = 0; at + OnsetFrame <= samples.Length; at += OnsetFrame)
        {
            if (LevelMeter.RmsDbfs(samples.Slice(at, OnsetFrame)) > threshold)
            {
                return at;
            }
        }

        return 0;
    }

    private MicrophoneFaults With(string one)
    {
        string[] parts = one.Split(':', 2);
        return parts[0] switch
        {
            "band8k" when parts.Length == 1 => this with { NarrowBandLink = true },
            "reverb" => this with { ReverberationTime = Number(parts, 0.6, 0.05, 10) },
            "clip" => this with { OverdriveDecibel = Number(parts, 12, 0, 60) },
            "level" => this with { LevelDbfs = Number(parts, null, -100, 0) },
            "dc" => this with { OffsetShare = Number(parts, 0.1, -1, 1) },
            "cut" => this with { CutMilliseconds = Number(parts, 80, 0, 10_000) },
            _ => throw new InvalidDataException($"--microphone {one}: no such fault; {Help}"),
        };
    }

    private static double Number(string[] parts, double? usual, double least, double most) =>
        parts.Length == 1 && usual is { } number ? number
        : parts.Length == 2 && double.TryParse(parts[1], NumberStyles.Float, CultureInfo.InvariantCulture, out double given) && given >= least && given <= most ? given
        : throw new InvalidDataException(FormattableString.Invariant($"--microphone {string.Join(':', parts)}: needs a number from {least} to {most} after \"{parts[0]}:\""));
}
