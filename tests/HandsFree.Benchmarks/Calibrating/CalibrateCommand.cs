using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using HandsFree.App.Composition;
using HandsFree.App.Hear;
using HandsFree.App.Hearing;
using HandsFree.Benchmarks.Hearing;
using HandsFree.Benchmarks.Microphone;
using HandsFree.Benchmarks.Recordings;
using HandsFree.Language.Grammars;
using HandsFree.Speech;
using HandsFree.Speech.Posterior;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.Benchmarks.Calibrating;

/// <summary>"calibrate FOLDER ...": gathers an engine's evidence of recordings, and makes its posterior's parameters of it.</summary>
internal static class CalibrateCommand
{
    private const int Folds = 7;

    public static Command Make()
    {
        Argument<string[]> folders = new("FOLDER") { Arity = ArgumentArity.ZeroOrMore, Description = $"Folders with a {TranscriptTable.Name}; none: only what --evidence holds" };
        Option<string> engine = new("--engine") { Required = true, Description = "An engine whose posterior weighs facts: vosk" };
        engine.AcceptOnlyFromAmong([.. LogisticModel.OfEngines.Keys]);
        Option<string[]> conditions = new("--conditions") { DefaultValueFactory = _ => ["clean"], AllowMultipleArgumentsPerToken = true, Description = "clean, a noise and its dB, or a microphone fault: pink:15 babble:10 reverb:0.6" };
        Option<int> every = new("--every") { DefaultValueFactory = _ => 1, Description = "Only each Nth recording" };
        Option<int> seed = new("--seed") { DefaultValueFactory = _ => 1, Description = "Of the noise" };
        Option<string?> state = new("--listening-for") { Description = "One state for all; without it the state goes by the meaning" };
        Option<string?> grammar = new("--grammar") { Description = "A JSGF file for all" };
        Option<string> evidence = new("--evidence") { Required = true, Description = "The file of evidence: added to, so that several runs make one calibration" };
        Option<string?> output = new("--out") { Description = "The parameters to write, src/HandsFree.Speech/ENGINE/Data/ENGINE-posterior.json" };
        Command command = new("calibrate", "Makes an engine's posterior parameters from recordings, judged on speakers that they were not made from")
        {
            folders, engine, conditions, every, seed, state, grammar, evidence, output,
        };
        command.SetAction(parsed => Failures.Told(Console.Error, () =>
        {
            string name = parsed.GetValue(engine)!;
            string file = parsed.GetValue(evidence)!;
            if (parsed.GetValue(folders) is { Length: > 0 } all)
            {
                Gather(name, all, parsed.GetValue(conditions)!, parsed.GetValue(every), parsed.GetValue(seed), parsed.GetValue(state), parsed.GetValue(grammar), file);
            }

            if (parsed.GetValue(output) is { } path)
            {
                File.WriteAllText(path, Fit(name, EvidenceRow.Read(file), Console.Out).ToJson());
            }

            return 0;
        }));
        return command;
    }

    private static void Gather(string engine, string[] folders, string[] conditions, int every, int seed, string? state, string? grammarFile, string evidence)
    {
        using ServiceProvider services = ServiceMaker.Make(Surroundings.OfThisProcess(), null);
        EngineChoice choice = services.GetRequiredService<Engines>().Start(engine, "--engine", 1);
        if (!choice.TryGet(out IRecognizer? recognizer))
        {
            throw new InvalidDataException(choice.Line);
        }

        using (recognizer)
        {
            GrammarShelf shelf = services.GetRequiredService<GrammarShelf>();
            Grammar? own = grammarFile is null ? null : Grammar.Load(grammarFile);
            var run = new EvidenceRun((IGathersEvidence)recognizer, services.GetRequiredService<FileHearing>());
            string folderNames = string.Join(' ', folders.Select(f => Path.GetFileName(Path.TrimEndingDirectorySeparator(f))));
            string command = $"{Today()}: calibrate {folderNames} --engine {engine} --conditions {string.Join(' ', conditions)} --every {every} --seed {seed}"
                + (state is null ? "" : $" --listening-for {state}") + (grammarFile is null ? "" : $" --grammar {Path.GetFileName(grammarFile)}");
            using var writer = new StreamWriter(evidence, append: true) { AutoFlush = true };
            foreach (string condition in conditions)
            {
                SoundMaker sounds = Sounds(condition, seed);
                foreach (string folder in folders)
                {
                    foreach (EvidenceRow row in run.Gather(TranscriptTable.Read(folder), every, GrammarOf, condition, sounds, command))
                    {
                        writer.WriteLine(JsonSerializer.Serialize(row));
                    }
                }
            }

            (Grammar, string) GrammarOf(Transcript said) => own is not null ? (own, own.Name) : (shelf.Of(state ?? said.State), state ?? said.State);
        }
    }

    private static SoundMaker Sounds(string condition, int seed) => condition.Split(':') switch
    {
        ["clean"] => new(null, null, seed),
        [("pink" or "babble") and var kind, var db] when double.TryParse(db, NumberStyles.Float, CultureInfo.InvariantCulture, out double snr) =>
            new(null, new(kind, snr, seed), seed),
        ["pink" or "babble", ..] => throw new InvalidDataException($"--conditions {condition}: write the noise with its dB: pink:15"),
        _ => new(MicrophoneFaults.Parse(condition), null, seed),
    };

    /// <summary>Fits on all but one part of the speakers and judges on that part, part by part; what is written is fitted on all.</summary>
    private static PosteriorParameters Fit(string engine, IReadOnlyList<EvidenceRow> rows, TextWriter output)
    {
        LogisticModel model = LogisticModel.OfEngines[engine];
        List<string> speakers = [.. rows.Select(r => r.Speaker).Distinct().Order(StringComparer.Ordinal)];
        Judged[] judged = [.. Enumerable.Range(0, Folds).SelectMany(fold =>
        {
            ILookup<bool, EvidenceRow> parts = rows.ToLookup(r => speakers.IndexOf(r.Speaker) % Folds == fold);
            PosteriorParameters parameters = model.Parameters(model.Fit([.. parts[false]]), 0, []);
            return parts[true].Select(row => Judged.Of(row, parameters));
        })];
        double least = CalibrationReport.Choose(judged);
        IReadOnlyList<string> lines = CalibrationReport.Lines(judged, least);
        foreach (string line in lines)
        {
            output.WriteLine(line);
        }

        JsonObject run = new()
        {
            ["date"] = Today(),
            ["commands"] = new JsonArray([.. rows.Select(r => r.Run).Distinct().Select(run => (JsonNode)run)]),
            ["recordings"] = new JsonArray([.. rows.GroupBy(r => $"{r.Set}, {r.State}, {r.Condition}").Select(g => (JsonNode)$"{g.Key}: {g.Count()}")]),
            ["speakers"] = speakers.Count,
            ["judged on speakers not seen, in parts of the speakers"] = Folds,
            ["gave"] = new JsonArray([.. lines.Select(line => (JsonNode)line)]),
        };
        return model.Parameters(model.Fit(rows), least, run);
    }

    private static string Today() => TimeProvider.System.GetUtcNow().ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
