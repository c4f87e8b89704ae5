using System.CommandLine;
using HandsFree.Audio.Wav;
using HandsFree.Benchmarks.Hearing;
using HandsFree.Benchmarks.Microphone;
using HandsFree.Benchmarks.Noise;
using HandsFree.Benchmarks.Recordings;
using HandsFree.Benchmarks.Results;
using HandsFree.Benchmarks.Statistics;
using HandsFree.Language.Grammars;
using HandsFree.Speech.Words;
using static System.FormattableString;

namespace HandsFree.Benchmarks.Words;

/// <summary>"words-calibration AUDIO GRAMMARS": errors, calibration and surprise of the engine words for temperatures, expectations and least
/// probabilities, by condition, on speakers that the training never heard. The accents are shown beside and nothing is chosen on them.</summary>
internal static class WordsCalibration
{
    private static readonly (string Name, string? Noise, double Snr, string? Microphone)[] Conditions =
    [
        ("clean", null, 0, null), ("babble 15 dB", "babble", 15, null), ("babble 10 dB", "babble", 10, null),
        ("first 80 ms cut off", null, 0, "cut:80"), ("8 kHz", null, 0, "band8k"), ("reverberation 1.2 s", null, 0, "reverb:1.2"),
    ];

    public static Command Make()
    {
        Argument<string> audio = new("AUDIO") { Description = "The folder of shared recordings" };
        Argument<string> grammars = new("GRAMMARS") { Description = "The folder of grammars" };
        Option<string[]> conditions = new("--conditions") { Description = "Only these, by their names", AllowMultipleArgumentsPerToken = true };
        conditions.AcceptOnlyFromAmong([.. Conditions.Select(c => c.Name)]);
        Command command = new("words-calibration", "Tries temperatures, expectations and thresholds of the engine words on speakers it never heard") { audio, grammars, conditions };
        command.SetAction(parsed => Run(parsed.GetValue(audio)!, parsed.GetValue(grammars)!, parsed.GetValue(conditions)!, Console.Out));
        return command;
    }

    private static void Run(string audio, string folder, string[] conditions, TextWriter output)
    {
        using WordsRecognizer engine = WordsRecognizer.Open();
        List<Sounding> all = [.. Conditions.Where(c => conditions.Length == 0 || conditions.Contains(c.Name)).SelectMany(condition => Sets(audio, folder).SelectMany(set => Heard(engine, set, condition)))];
        foreach (double temperature in (double[])[1, 1.15, 1.3])
        {
            var evidence = all.Select(s => (Sounding: s, Evidence: engine.Weigh((float[])s.Logits.Clone(), s.Grammar, temperature))).ToList();
            foreach (double expectation in (double[])[3, 5])
            {
                foreach (double least in (double[])[0.75, 0.85, 0.9, 0.95])
                {
                    WordsParameters parameters = WordsParameters.Measured with { Temperature = temperature, Expectation = expectation, LeastProbability = least };
                    var rows = evidence.Select(e => (e.Sounding.Group, e.Sounding.Condition,
                        Row: Judge.Row(e.Sounding.Said, e.Sounding.Grammar, "", WordsPosterior.Decide(e.Evidence, parameters)))).ToList();
                    output.WriteLine(Invariant($"T {temperature} E {expectation} L {least}: kept apart {Line([.. rows.Where(r => r.Group != "accents").Select(r => r.Row)])}; accents {Line([.. rows.Where(r => r.Group == "accents").Select(r => r.Row)])}"));
                    foreach (var group in rows.GroupBy(r => (r.Group, r.Condition)))
                    {
                        output.WriteLine($"    {group.Key.Group}, {group.Key.Condition}: {Line([.. group.Select(r => r.Row)])}");
                    }
                }
            }
        }
    }

    /// <summary>Wrong / not heard of the sentences of the grammar; let in of the others; calibration error of all best values; wrong above 0.95.</summary>
    private static string Line(IReadOnlyList<HeardRow> rows)
    {
        int sentences = rows.Count(r => r.Expected is not null && r.Verdict != Verdict.OutsideGrammar);
        int wrong = rows.Count(r => r.Verdict is Verdict.WrongValue or Verdict.WrongOther);
        int sure = rows.Count(r => r.IsWrong && r.Best!.Probability > 0.95);
        return Invariant($"{wrong} / {rows.Count(r => r.Verdict == Verdict.NotHeard)} of {sentences}, let in {rows.Count(r => r.Verdict == Verdict.LetIn)} of {rows.Count(r => r.Expected is null)}, error {Calibration.ExpectedError(HearingReport.Predictions(rows), HearingReport.Bins):0.000}, sure and wrong {sure}");
    }

    private static IEnumerable<Sounding> Heard(WordsRecognizer engine, (string Group, IReadOnlyList<Transcript> Folder, Func<Transcript, Grammar> Grammar, Func<Transcript, bool> Chosen) set, (string Name, string? Noise, double Snr, string? Microphone) condition)
    {
        SoundMaker sounds = new(condition.Microphone is null ? null : MicrophoneFaults.Parse(condition.Microphone),
            condition.Noise is null ? null : new NoiseMaker(condition.Noise, condition.Snr, 1), 1);
        return set.Folder.Where(set.Chosen).Select(said => new Sounding(set.Group, condition.Name, said, set.Grammar(said),
            engine.Logits(sounds.Of(WavReader.Read(said.FilePath).Clip!.Samples, said, set.Folder))));
    }

    private static IEnumerable<(string Group, IReadOnlyList<Transcript> Folder, Func<Transcript, Grammar> Grammar, Func<Transcript, bool> Chosen)> Sets(string audio, string folder)
    {
        Dictionary<string, Grammar> states = [];
        Grammar numbers = Grammar.Load(Path.Combine(AppContext.BaseDirectory, "number-strings.jsgf"));
        Grammar Of(string state) => states.TryGetValue(state, out Grammar? known) ? known : states[state] = Grammar.Load(Path.Combine(folder, state + ".jsgf"));
        foreach (string[] pair in (string[][])[["an4-numbers", "an4-spelled"], ["dictation-synthetic", "dialogue-synthetic"]])
        {
            IReadOnlyList<Transcript>[] tables = [.. pair.Select(name => TranscriptTable.Read(Path.Combine(audio, name)))];
            HashSet<string> apart = KeptApart.Speakers(tables.SelectMany(t => t));
            foreach (IReadOnlyList<Transcript> table in tables)
            {
                yield return (table[0].SetName, table, said => said.SetName == "an4-numbers" ? numbers : Of(said.State), said => apart.Contains(said.Speaker));
            }
        }

        foreach (string name in (string[])["accents-dictation", "accents-dialogue"])
        {
            yield return ("accents", TranscriptTable.Read(Path.Combine(audio, name)), said => Of(said.State), _ => true);
        }
    }

    private sealed record Sounding(string Group, string Condition, Transcript Said, Grammar Grammar, float[] Logits);
}
