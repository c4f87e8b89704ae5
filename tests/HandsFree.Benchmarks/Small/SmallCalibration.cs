using System.CommandLine;
using System.Globalization;
using HandsFree.Audio.Wav;
using HandsFree.Benchmarks.Sphinx;
using HandsFree.Language.Meaning;
using HandsFree.Language.Sentences;
using HandsFree.Speech;
using HandsFree.Speech.Small;

namespace HandsFree.Benchmarks.Small;

/// <summary>"small-calibration AUDIO GRAMMARS": surprise, errors and calibration of the engine small for temperatures and expectations, on
/// the speakers that its training kept apart (every third in order of name in each pair of folders).</summary>
internal static class SmallCalibration
{
    public static Command Make()
    {
        Argument<string> audio = new("AUDIO") { Description = "The folder of shared recordings" };
        Argument<string> grammars = new("GRAMMARS") { Description = "The folder of grammars" };
        Command command = new("small-calibration", "Tries temperatures and expectations of the engine small on speakers it never heard") { audio, grammars };
        command.SetAction(parsed => Run(parsed.GetValue(audio)!, parsed.GetValue(grammars)!, Console.Out));
        return command;
    }

    private static void Run(string audio, string grammars, TextWriter output)
    {
        using SmallRecognizer engine = SmallRecognizer.Open();
        HashSet<string> apart = [.. Apart(audio, "an4-numbers", "an4-spelled"), .. Apart(audio, "dictation-synthetic", "dialogue-synthetic")];
        var clips = TrialClips.Read(audio, grammars).Where(c => apart.Contains(Path.GetFileName(c.Path)))
            .Select(c => (Clip: c, Truth: Matcher.Match(c.Grammar, c.Words).FirstOrDefault(), Logits: engine.Logits(WavReader.Read(c.Path).Clip!.Samples))).ToList();
        foreach (double temperature in (double[])[0.8, 1, 1.3, 1.7])
        {
            var evidence = clips.Select(c => (c.Clip, c.Truth, Evidence: engine.Weigh((float[])c.Logits.Clone(), c.Clip.Grammar, temperature))).ToList();
            foreach (double expectation in (double[])[3, 5, 6, 7, 8, 10])
            {
                var parameters = SmallParameters.Measured with { Temperature = temperature, Expectation = expectation };
                var heard = evidence.Select(e => (e.Clip, e.Truth, Hearing: SmallPosterior.Decide(e.Evidence, parameters))).ToList();
                string line = string.Join("  ", new[] { true, false }.Select(half => Line([.. heard.Where(h => h.Clip.Tuning == half)])));
                output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"temperature {temperature} expectation {expectation}: {line}"));
            }
        }
    }

    /// <summary>Mean surprise (natural logarithm) at what was said, then by group: wrong or let in, not heard, of how many.</summary>
    private static string Line(List<(TrialClip Clip, SemanticValue? Truth, Speech.Hearing Hearing)> heard)
    {
        double surprise = heard.Average(h => -Math.Log(Math.Max(1e-4, Probability(h.Truth, h.Hearing))));
        string groups = string.Join(", ", heard.GroupBy(h => h.Clip.Group).Select(g =>
            $"{g.Key} {g.Count(h => IsHeard(h.Hearing) && !Equals(h.Hearing.Best!.Meaning, h.Truth))} / {g.Count(h => !IsHeard(h.Hearing) && h.Truth is not null)} of {g.Count()}"));
        return string.Create(CultureInfo.InvariantCulture, $"surprise {surprise:F3} ({groups})");
    }

    private static double Probability(SemanticValue? truth, Speech.Hearing hearing) => truth is null
        ? 1 - hearing.Candidates.Sum(c => c.Probability)
        : hearing.Candidates.FirstOrDefault(c => c.Meaning.Equals(truth))?.Probability ?? 0;

    private static bool IsHeard(Speech.Hearing hearing) => hearing.Outcome == HearingOutcome.Heard;

    private static IEnumerable<string> Apart(string audio, params string[] folders)
    {
        string[][] rows = [.. folders.SelectMany(f => File.ReadLines(Path.Combine(audio, f, "transcripts.tsv")).Skip(1).Select(line => line.Split('\t')))];
        List<string> speakers = [.. rows.Select(row => row[1]).Distinct().Order(StringComparer.Ordinal)];
        return rows.Where(row => speakers.IndexOf(row[1]) % 3 == 0).Select(row => row[0]);
    }
}
