using System.CommandLine;
using System.Diagnostics;
using HandsFree.App.Composition;
using HandsFree.App.Hearing;
using HandsFree.Benchmarks.Results;
using HandsFree.Speech;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.Benchmarks.Hearing;

/// <summary>"hearing FOLDER ...": folders of recordings through the product's own engine, counted.</summary>
internal static class HearingCommand
{
    public static Command Make()
    {
        HearingOptions options = new();
        Option<string?> engine = new("--engine") { Description = "words or vosk; without it words" };
        engine.AcceptOnlyFromAmong([.. EngineNames.All]);
        Option<bool> bySpeaker = new("--by-speaker") { Description = "A table of the speakers, too" };
        Option<string?> json = new("--json") { Description = "A file for the result of each recording" };
        Command command = new("hearing", "Counts what is heard wrong, not heard, and let in; measures calibration, speed and memory") { engine, bySpeaker, json };
        options.AddTo(command);
        command.SetAction(parsed => Failures.Told(Console.Error, () =>
        {
            using ServiceProvider services = ServiceMaker.Make(Surroundings.OfThisProcess(), null);
            HearingPlan plan = options.Read(parsed);
            string? file = parsed.GetValue(json);
            Stopwatch loading = Stopwatch.StartNew();
            EngineChoice choice = services.GetRequiredService<Engines>().Start(parsed.GetValue(engine), "--engine", plan.Threads);
            if (!choice.TryGet(out IRecognizer? recognizer))
            {
                throw new InvalidDataException(choice.Line);
            }

            using (recognizer)
            {
                HearingResult.CheckPlace(file);
                Console.WriteLine(FormattableString.Invariant($"{choice.Line}; loaded in {loading.Elapsed.TotalSeconds:F1} s"));
                HearingResult result = plan.Run(recognizer, services, loading.Elapsed, Console.Out);
                if (file is not null)
                {
                    result.Save(file);
                }

                HearingReport.Write(result, parsed.GetValue(bySpeaker), Console.Out);
                return 0;
            }
        }));
        return command;
    }
}
