using HandsFree.Audio.Tones;
using HandsFree.Core.Dialogue;

namespace HandsFree.App.Session;

/// <summary>The tones of the dialogue: a high short one begins a count, a lower long one ends it.</summary>
internal static class Tones
{
    private const double PeakDbfs = -12;

    public static float[] Of(Tone tone) => tone switch
    {
        Tone.CountBegins => ToneMaker.Make(880, TimeSpan.FromMilliseconds(200), PeakDbfs),
        Tone.CountEnds => ToneMaker.Make(587, TimeSpan.FromMilliseconds(500), PeakDbfs),
        _ => throw new ArgumentOutOfRangeException(nameof(tone), tone, "no such tone"),
    };
}
