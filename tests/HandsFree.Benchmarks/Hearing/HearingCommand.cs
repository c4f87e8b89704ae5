using System.CommandLine;
using System.Diagnostics;
using System.Text.Json;
using HandsFree.App.Composition;
using HandsFree.App.Hear;
using HandsFree.App.Hearing;
using HandsFree.Benchmarks.Noise;
using HandsFree.Language.Grammars;
using HandsFree.Speech;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.Benchmarks.Hearing;

/// <summary>"hearing FOLDER": a folder of recordings through the product's own engine, counted.</summary>
internal static class HearingCommand
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };

    public static Command Make()
    {
        Argument<string> folder = new("FOLDER") { Description = "WAV files with a transcripts.tsv (file, speaker, words, reading or meaning)" };
        Option<string?> engine = new("--engine") { Description = "neural, vosk or sphinx; without it the best that is here" };
        Option<string?> state = new("--listening-for") { Description = "One state for all files; without it the state goes by the first letter of the name" };
        Option<string?> grammar = new("--grammar") { Description = "A JSGF file of your own; then words are compared, figures by figures" };
        Option<int> every = new("--every") { Description = "Only each Nth recording", DefaultValueFactory = _ => 1 };
        Option<int> threads = new("--threads") { Description = "Processor threads of one hearing", DefaultValueFactory = _ => 1 };
        Option<string?> noise = new("--noise") { Description = "pink, babble (of the folder's other recordings) or a WAV file" };
        Option<double> snr = new("--snr") { Description = "Speech above the noise, dB", DefaultValueFactory = _ => 15 };
        Option<int> seed = new("--seed") { Description = "Of the noise", DefaultValueFactory = _ => 1 };
        Option<string?> json = new("--json") { Description = "A file for the result of each recording" };
        Command command = new("hearing", "Counts what is heard wrong, not heard, and let in; measures speed and memory")
        {
            folder, engine, state, grammar, every, threads, noise, snr, seed, json,
        };
        command.SetAction(parsed =>
        {
            using ServiceProvider services = ServiceMaker.Make(Surroundings.OfThisProcess(), null);
            Stopwatch loading = Stopwatch.StartNew();
            EngineChoice choice = services.GetRequiredService<Engines>().Start(parsed.GetValue(engine), "--engine", parsed.GetValue(threads));
            if (!choice.TryGet(out IRecognizer? recognizer))
            {
                Console.Error.WriteLine(choice.Line);
                return 2;
            }

            using (recognizer)
            {
                Console.WriteLine($"{choice.Line}; loaded in {loading.Elapsed.TotalSeconds:F1} s");
                string? own = parsed.GetValue(grammar);
                GrammarShelf shelf = services.GetRequiredService<GrammarShelf>();
                Grammar? fixedGrammar = own is not null ? Grammar.Load(own) : parsed.GetValue(state) is { } named ? shelf.Of(named) : null;
                var run = new HearingRun(recognizer, services.GetRequiredService<FileHearing>(), t => fixedGrammar ?? shelf.Of(t.State), own is not null,
                    parsed.GetValue(noise) is { } kind ? new NoiseMaker(kind, parsed.GetValue(snr), parsed.GetValue(seed)) : null);
                run.Hear(parsed.GetValue(folder)!, parsed.GetValue(every), Console.Out);
                run.Report(Console.Out);
                if (parsed.GetValue(json) is { } file)
                {
                    File.WriteAllText(file, JsonSerializer.Serialize(run.Rows, Indented));
                }

                return 0;
            }
        });
        return command;
    }
}
