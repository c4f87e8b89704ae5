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
    /// <summary>Hears each Nth recording of a folder, one after the other.</summary>
    /// <exception cref="InvalidDataException">A folder or recording that can't be read.</exception>
    /// <exception cref="GrammarException">A grammar that the engine can't listen for.</exception>
    public IEnumerable<HeardRow> Hear(IReadOnlyList<Transcript> folder, int every)
    {
        foreach (Transcript said in folder.Where((_, i) => i % every == 0))
        {
            WavResult read = WavReader.Read(said.FilePath);
            AudioClip clip = read.IsRead ? read.Clip : throw new InvalidDataException(read.Error);
            yield return Hear(said, clip with { Samples = sounds.Of(clip.Samples, said, folder) });
        }
    }

    private HeardRow Hear(Transcript said, AudioClip clip)
    {
        var (grammar, name) = grammarOf(said);
        recognizer.Prepare(grammar);
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
