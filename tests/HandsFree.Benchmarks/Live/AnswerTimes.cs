using HandsFree.App.Demo.Script;
using HandsFree.App.Session;
using HandsFree.Audio;
using HandsFree.Audio.Devices;
using HandsFree.Audio.Echo;
using HandsFree.Audio.Endpointing;

namespace HandsFree.Benchmarks.Live;

/// <summary>From the end of speech to the first sound of the answer, both taken from what the sinks played: each clip is found in the
/// recording of the microphone's sink by cross-correlation, the answer is the first sound of the earpiece's sink after it.</summary>
internal static class AnswerTimes
{
    /// <summary>What is searched for of a clip.</summary>
    private static readonly TimeSpan Beginning = TimeSpan.FromMilliseconds(500);

    private static readonly TimeSpan SearchBefore = TimeSpan.FromMilliseconds(200);
    private static readonly TimeSpan SearchAfter = TimeSpan.FromSeconds(1.2);
    private static readonly TimeSpan LongestAnswer = TimeSpan.FromSeconds(6);

    /// <summary>A clip found with less likeness is not counted.</summary>
    private const double Alike = 0.8;

    /// <summary>Speech ends where it falls to a thirtieth of its peak, 30 dB.</summary>
    private const float EndOfSpeech = 1 / 30f;

    private const float Sound = 0.001f;

    /// <summary>One row for each clip that was found and answered. Sound before the endpointer can have heard a pause is no answer: the
    /// program was speaking already.</summary>
    public static IEnumerable<AnswerTime> Of(
        IReadOnlyList<SpokenClip> spoken, ClipShelf clips, ListeningGrammars grammars, TimedSound mouth, TimedSound earpiece)
    {
        EndpointerOptions quiet = new();
        for (int i = 0; i < spoken.Count; i++)
        {
            SpokenClip each = spoken[i];
            float[] clip = clips.Samples(each.Clip);
            DateTimeOffset until = i + 1 < spoken.Count ? spoken[i + 1].At : DateTimeOffset.MaxValue;
            if (each.Clip.Noise is null && grammars.For(each.Listening) is { } grammar
                && EndOf(each, clip, mouth) is { } end && earpiece.FirstSound(end, Sound) is { } answer
                && answer < until && answer - end < LongestAnswer && answer - end >= quiet.PauseQuiet)
            {
                TimeSpan awaited = Continuations.MayGoOn(grammar, each.Clip.Text) ? quiet.IncompleteTimeout : quiet.CompleteTimeout;
                yield return new AnswerTime(each.Clip.Text, answer - end, awaited);
            }
        }
    }

    private static DateTimeOffset? EndOf(SpokenClip spoken, float[] clip, TimedSound mouth)
    {
        float[] beginning = clip[..Math.Min(clip.Length, SampleTime.Samples(Beginning))];
        int from = mouth.PositionOf(spoken.At - SearchBefore);
        int length = Math.Min(SampleTime.Samples(SearchBefore + SearchAfter) + beginning.Length, mouth.Samples.Length - from);
        if (length < beginning.Length || beginning.All(s => s == 0))
        {
            return null;
        }

        (int position, double likeness) = EchoFinder.Find(mouth.Samples.Slice(from, length), beginning);
        float least = clip.Max(Math.Abs) * EndOfSpeech;
        int last = Array.FindLastIndex(clip, s => Math.Abs(s) >= least);
        return likeness >= Alike ? mouth.TimeOf(from + position + last) : null;
    }
}
