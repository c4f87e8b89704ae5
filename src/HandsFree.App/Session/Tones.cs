using HandsFree.Audio;
using HandsFree.Audio.Tones;
using HandsFree.Core.Dialogue;

namespace HandsFree.App.Session;

/// <summary>The tones of the dialogue: a high short one begins a count, a lower long one ends it. Two quick rising ones: saved, or ready. Three
/// low buzzes: not saved, and words follow.</summary>
internal static class Tones
{
    private const double PeakDbfs = -12;
    private static readonly TimeSpan Short = TimeSpan.FromMilliseconds(70);
    private static readonly TimeSpan Long = TimeSpan.FromMilliseconds(250);

    public static float[] Of(Tone tone) => tone switch
    {
        Tone.CountBegins => ToneMaker.Make(880, TimeSpan.FromMilliseconds(200), PeakDbfs),
        Tone.CountEnds => ToneMaker.Make(587, TimeSpan.FromMilliseconds(500), PeakDbfs),
        Tone.Saved or Tone.Ready => [.. ToneMaker.Make(988, Short, PeakDbfs), .. new float[AudioClip.SampleRate / 20], .. ToneMaker.Make(1319, Short, PeakDbfs)],
        Tone.NotSaved => [.. Enumerable.Repeat((float[])[.. ToneMaker.Make(220, Long, PeakDbfs), .. new float[AudioClip.SampleRate / 10]], 3).SelectMany(t => t)],
        _ => throw new ArgumentOutOfRangeException(nameof(tone), tone, "no such tone"),
    };
}
