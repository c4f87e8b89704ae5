using System.Diagnostics;
using HandsFree.App.Hearing;
using HandsFree.Audio;
using HandsFree.Audio.Endpointing;
using HandsFree.Audio.Wav;
using HandsFree.Benchmarks.Recordings;
using HandsFree.Benchmarks.Results;
using HandsFree.Language.Grammars;
using HandsFree.Speech;

namespace HandsFree.Benchmarks.Hearing;

/// <summary>Hears folders of recordings with one engine.</summary>
/// <param name="recognizer">The engine.</param>
/// <param name="files">Finds the speech.</param>
/// <param name="grammarOf">The grammar in force for a recording, and its name.</param>
/// <param name="sounds">What becomes of a recording before it is heard.</param>
internal sealed class HearingRun(IRecognizer recognizer, FileHearing files, Func<Transcript, (Grammar Grammar, string Name)> grammarOf, SoundMaker sounds)
{
    /// <summary>Reads all that will be heard and makes the engine ready for it, so that nothing that is wrong with it ends a long run.</summary>
    /// <exception cref="InvalidDataException">A recording can't be read.</exception>
    /// <exception cref="GrammarException">A grammar that the engine can't listen for.</exception>
    public void Check(IReadOnlyList<Transcript> folder, int every)
    {
        string[] errors = [.. Chosen(folder, every).Select(said => WavReader.Read(said.FilePath)).Where(read => !read.IsRead).Select(read => read.Error!)];
        if (errors.Length > 0)
        {
            throw new InvalidDataException(errors.Length == 1 ? errors[0] : $"{errors.Length} recordings can't be read, the first: {errors[0]}");
        }

        foreach (Transcript said in Chosen(folder, every))
        {
            recognizer.Prepare(grammarOf(said).Grammar);
        }
    }

    /// <summary>Hears each Nth recording of a folder, one after the other.</summary>
    public IEnumerable<HeardRow> Hear(IReadOnlyList<Transcript> folder, int every) => Hear(folder, Chosen(folder, every));

    /// <summary>Hears some recordings of a folder, one after the other.</summary>
    public IEnumerable<HeardRow> Hear(IReadOnlyList<Transcript> folder, IEnumerable<Transcript> chosen)
    {
        foreach (Transcript said in chosen)
        {
            WavResult read = WavReader.Read(said.FilePath);
            AudioClip clip = read.IsRead ? read.Clip : throw new InvalidDataException(read.Error);
            yield return Hear(said, clip with { Samples = sounds.Of(clip.Samples, said, folder) });
        }
    }

    private static IEnumerable<Transcript> Chosen(IReadOnlyList<Transcript> folder, int every) => folder.Where((_, i) => i % every == 0);

    private HeardRow Hear(Transcript said, AudioClip clip)
    {
        var (grammar, name) = grammarOf(said);
        SpeechSegment? speech = files.Speech(clip);
        Stopwatch clock = Stopwatch.StartNew();
        Speech.Hearing heard = speech is null ? Speech.Hearing.Nothing : recognizer.Hear(speech.Samples, grammar);
        TimeSpan decoding = clock.Elapsed;
        return Judge.Row(said, grammar, name, heard) with
        {
            AudioSeconds = clip.Duration.TotalSeconds,
            SpeechSeconds = (speech?.Samples.Length ?? 0) / (double)AudioClip.SampleRate,
            DecodeMilliseconds = speech is null ? 0 : decoding.TotalMilliseconds,
        };
    }
}
