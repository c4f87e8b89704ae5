using System.Diagnostics;
using HandsFree.App.Hear;
using HandsFree.App.Hearing;
using HandsFree.Audio;
using HandsFree.Audio.Endpointing;
using HandsFree.Audio.Wav;
using HandsFree.Benchmarks.Noise;
using HandsFree.Benchmarks.Statistics;
using HandsFree.Language.Grammars;
using HandsFree.Language.Sentences;
using HandsFree.Speech;

namespace HandsFree.Benchmarks.Hearing;

/// <summary>Hears a folder and counts.</summary>
/// <param name="recognizer">The engine.</param>
/// <param name="files">Finds the speech.</param>
/// <param name="grammarOf">The grammar in force for a recording.</param>
/// <param name="byWords">Compare the words, not the meaning: for a grammar of one's own.</param>
/// <param name="noise">Noise to mix in, or null.</param>
internal sealed class HearingRun(IRecognizer recognizer, FileHearing files, Func<Transcript, Grammar> grammarOf, bool byWords, NoiseMaker? noise)
{
    private const double Sure = 0.95;
    private readonly List<HeardRow> rows = [];
    private readonly Dictionary<Verdict, int> counts = Enum.GetValues<Verdict>().ToDictionary(v => v, _ => 0);
    private readonly List<double> decodeSeconds = [];
    private double audioSeconds;

    /// <summary>Hears; writes a line for each recording that was not heard as it was meant.</summary>
    public void Hear(string folder, int every, TextWriter output)
    {
        IReadOnlyList<Transcript> all = Transcript.Read(folder);
        string[] names = [.. all.Select(t => t.File)];
        for (int i = 0; i < all.Count; i += every)
        {
            Transcript transcript = all[i];
            AudioClip clip = WavReader.Read(Path.Combine(folder, transcript.File)).Clip ?? throw new IOException($"{transcript.File} can't be read");
            clip = noise is null ? clip : clip with { Samples = noise.Under(clip.Samples, i, folder, names) };
            SpeechSegment? speech = files.Speech(clip);
            Stopwatch clock = Stopwatch.StartNew();
            Speech.Hearing hearing = speech is null ? Speech.Hearing.Nothing : recognizer.Hear(speech.Samples, grammarOf(transcript));
            decodeSeconds.Add(clock.Elapsed.TotalSeconds);
            audioSeconds += clip.Duration.TotalSeconds;
            Verdict verdict = Judge(transcript, hearing);
            counts[verdict]++;
            rows.Add(new(transcript.File, transcript.Words, verdict.ToString(), Said(hearing), hearing.Best?.Probability ?? 0,
                double.IsFinite(hearing.Margin) ? hearing.Margin : null, 1000 * decodeSeconds[^1]));
            if (verdict is not (Verdict.Right or Verdict.Refused))
            {
                output.WriteLine($"{verdict}\t{transcript.File}\t{transcript.Words}\t{hearing.Outcome} {Said(hearing)}\t\"{hearing.Transcript}\"\tprobability {hearing.Best?.Probability:F3} margin {hearing.Margin:F1}");
            }
        }
    }

    /// <summary>What was heard of each recording, in order.</summary>
    public IReadOnlyList<HeardRow> Rows => rows;

    /// <summary>The table.</summary>
    public void Report(TextWriter output)
    {
        int all = counts.Values.Sum();
        decodeSeconds.Sort();
        foreach (var (verdict, count) in counts)
        {
            var (low, high) = Wilson.Interval(count, all);
            output.WriteLine($"{verdict,-9} {count,4} of {all}  {(double)count / all,6:P1}  (95 %: {low:P1} to {high:P1})");
        }

        int sure = rows.Count(r => r.Verdict is nameof(Verdict.Wrong) or nameof(Verdict.LetIn) && r.Probability > Sure);
        output.WriteLine($"wrong or let in with a probability above {Sure}: {sure}");
        output.WriteLine($"real time factor {decodeSeconds.Sum() / audioSeconds:F3}; decoding median {1000 * decodeSeconds[all / 2]:F0} ms, "
            + $"95th percentile {1000 * decodeSeconds[all * 95 / 100]:F0} ms; peak memory {Process.GetCurrentProcess().PeakWorkingSet64 >> 20} MiB");
    }

    private Verdict Judge(Transcript transcript, Speech.Hearing hearing)
    {
        if (hearing.Outcome != HearingOutcome.Heard)
        {
            return transcript.Meaning is null && !byWords ? Verdict.Refused : transcript.IsUnused ? Verdict.Unused : Verdict.NotHeard;
        }

        if (byWords)
        {
            Grammar grammar = grammarOf(transcript);
            return Matcher.Match(grammar, transcript.Words).Contains(hearing.Best!.Meaning) ? Verdict.Right : Verdict.Wrong;
        }

        string said = Said(hearing);
        return transcript.Means(said) ? Verdict.Right
            : transcript.Meaning is not null ? Verdict.Wrong
            : said == """{"hedge": true}""" ? Verdict.Refused : Verdict.LetIn;
    }

    private static string Said(Speech.Hearing hearing) => hearing.Best is { } best ? MeaningJson.Of(best) : "";
}
