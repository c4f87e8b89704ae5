using System.CommandLine;
using HandsFree.App.Composition;
using HandsFree.App.Hear;
using HandsFree.App.Hearing;
using HandsFree.Benchmarks.Microphone;
using HandsFree.Benchmarks.Noise;
using HandsFree.Benchmarks.Recordings;
using HandsFree.Benchmarks.Results;
using HandsFree.Benchmarks.Statistics;
using HandsFree.Language.Grammars;
using HandsFree.Speech;
using Microsoft.Extensions.DependencyInjection;
using static System.FormattableString;

namespace HandsFree.Benchmarks.Hearing;

/// <summary>"hearing-table AUDIO": one engine over people, made voices and accents that no training heard, in quiet, noise and through bad
/// microphones; the table by which an engine is chosen, in Markdown.</summary>
internal static class HearingTable
{
    private const string People = "human number strings", Made = "dictation and dialogue", Accents = "accents", Other = "spelled names";

    private static readonly (string Set, string? Noise, double Snr, string? Microphone)[] Rows =
    [
        (People, null, 0, null), (People, "babble", 15, null), (People, "babble", 10, null),
        (Made, null, 0, null), (Made, "babble", 15, null), (Made, "babble", 10, null),
        (Made, null, 0, "cut:80"), (Made, null, 0, "cut:160"), (Made, null, 0, "reverb:1.2"), (Made, null, 0, "clip:24"), (Made, null, 0, "band8k"),
        (Accents, null, 0, null), (Accents, "babble", 15, null), (Accents, "babble", 10, null),
        (Other, null, 0, null), (Other, "babble", 10, null),
    ];

    public static Command Make()
    {
        Argument<string> audio = new("AUDIO") { Description = "The folder of shared recordings" };
        Option<string?> engine = new("--engine") { Description = "The engine; without it the best that is here" };
        engine.AcceptOnlyFromAmong([.. EngineNames.All]);
        Option<int> seeds = new("--seeds") { Description = "How many seeds of the noise", DefaultValueFactory = _ => 5 };
        Option<string?> only = new("--only") { Description = "Only rows whose name has this in it" };
        Command command = new("hearing-table", "The table by which an engine is chosen: people, made voices and accents that no training heard") { audio, engine, seeds, only };
        command.SetAction(parsed => Failures.Told(Console.Error, () => Run(parsed.GetValue(audio)!, parsed.GetValue(engine), parsed.GetValue(seeds), parsed.GetValue(only), Console.Out)));
        return command;
    }

    private static int Run(string audio, string? engine, int seeds, string? only, TextWriter output)
    {
        using ServiceProvider services = ServiceMaker.Make(Surroundings.OfThisProcess(), null);
        EngineChoice choice = services.GetRequiredService<Engines>().Start(engine, "--engine", 1);
        using IRecognizer recognizer = choice.TryGet(out IRecognizer? found) ? found : throw new InvalidDataException(choice.Line);
        GrammarShelf shelf = services.GetRequiredService<GrammarShelf>();
        Grammar numbers = Grammar.Load(Path.Combine(AppContext.BaseDirectory, "number-strings.jsgf"));
        (Grammar, string) GrammarOf(Transcript said) => said.SetName == "an4-numbers" ? (numbers, "number strings") : (shelf.Of(said.State), said.State);
        output.WriteLine($"{choice.Line}; {seeds} seeds of the noise");
        output.WriteLine("| recordings | wrong | sure and wrong | said again | let in, stray yes | calibration error | worst speaker | worst accent | decoding, median and 95th, ms |");
        output.WriteLine("| --- | --- | --- | --- | --- | --- | --- | --- | --- |");
        foreach (var (set, noise, snr, microphone) in Rows)
        {
            string name = Invariant($"{set}{(noise is null ? "" : $", {noise} {snr} dB")}{(microphone is null ? "" : $", {microphone}")}");
            if (only is not null && !name.Contains(only, StringComparison.Ordinal))
            {
                continue;
            }

            List<HeardRow> heard = [.. Enumerable.Range(1, noise is null ? 1 : seeds).SelectMany(seed =>
            {
                HearingRun run = new(recognizer, services.GetRequiredService<FileHearing>(), GrammarOf,
                    new SoundMaker(microphone is null ? null : MicrophoneFaults.Parse(microphone), noise is null ? null : new NoiseMaker(noise, snr, seed), seed));
                return Chosen(audio, set).SelectMany(folder => run.Hear(folder.All, folder.Chosen));
            })];
            output.WriteLine(Line(name, heard, set == Accents));
            foreach (HeardRow wrong in heard.Where(r => r.IsWrong))
            {
                output.WriteLine($"<!-- {HearingReport.Line(wrong)} -->");
            }
        }

        return 0;
    }

    private static string Line(string name, IReadOnlyList<HeardRow> rows, bool byAccent)
    {
        HeardRow[] meant = [.. rows.Where(IsMeant)];
        int others = rows.Count(r => r.Expected is null), wrong = meant.Count(r => r.IsWrong);
        string again = ShareText.Of(meant.Count(r => r.Verdict == Verdict.NotHeard), meant.Length);
        double error = Calibration.ExpectedError(HearingReport.Predictions(rows), HearingReport.Bins);
        return Invariant($"| {name}: {meant.Length} | {ShareText.Of(wrong, meant.Length)} | {rows.Count(r => r.IsWrong && r.Best!.Probability > 0.95)} | {again} | {rows.Count(r => r.Verdict == Verdict.LetIn)} of {others}, {rows.Count(r => r.StrayYes)} | {error:0.000} | {Worst(meant, r => r.Speaker)} | {(byAccent ? Worst(meant, r => r.Speaker.Split('/')[^1]) : "")} | {HearingReport.DecodeTime(rows, 0.5):0}, {HearingReport.DecodeTime(rows, 0.95):0} |");
    }

    /// <summary>Who is heard wrong or not at all most often: wrong / said again of how many.</summary>
    private static string Worst(IReadOnlyList<HeardRow> rows, Func<HeardRow, string> by) => rows.GroupBy(by)
        .OrderByDescending(g => (double)g.Count(r => r.Verdict != Verdict.Right) / g.Count()).ThenBy(g => g.Key, StringComparer.Ordinal)
        .Select(g => $"{g.Key} {g.Count(r => r.IsWrong)} / {g.Count(r => r.Verdict == Verdict.NotHeard)} of {g.Count()}").FirstOrDefault("");

    private static bool IsMeant(HeardRow row) => row.Expected is not null && row.Verdict != Verdict.OutsideGrammar;

    /// <summary>The tables of a set, and of each the recordings of speakers kept apart; the accents are all kept apart.</summary>
    private static IEnumerable<(IReadOnlyList<Transcript> All, IEnumerable<Transcript> Chosen)> Chosen(string audio, string set)
    {
        (string[] read, string[] used) = set switch
        {
            People => (["an4-numbers", "an4-spelled"], ["an4-numbers"]),
            Other => (["an4-numbers", "an4-spelled"], ["an4-spelled"]),
            Made => (["dictation-synthetic", "dialogue-synthetic"], ["dictation-synthetic", "dialogue-synthetic"]),
            _ => ((string[])["accents-dictation", "accents-dialogue"], (string[])["accents-dictation", "accents-dialogue"]),
        };
        IReadOnlyList<Transcript>[] tables = [.. read.Select(name => TranscriptTable.Read(Path.Combine(audio, name)))];
        HashSet<string> apart = KeptApart.Speakers(tables.SelectMany(t => t));
        return tables.Where(t => used.Contains(t[0].SetName)).Select(t => (t, t.Where(said => set == Accents || apart.Contains(said.Speaker))));
    }
}
