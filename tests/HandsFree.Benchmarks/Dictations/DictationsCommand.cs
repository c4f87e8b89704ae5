using System.CommandLine;
using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using HandsFree.Benchmarks.Dictations.Counting;
using HandsFree.Benchmarks.Dictations.Sound;

namespace HandsFree.Benchmarks.Dictations;

/// <summary>"dictations": a simulated aide dictates through the whole product, and what is saved is held against what she said.</summary>
internal static class DictationsCommand
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };

    public static Command Make()
    {
        Option<int> count = new("--count") { Description = "Dictations at least", DefaultValueFactory = _ => 500 };
        Option<int> seed = new("--seed") { Description = "Of all that is drawn", DefaultValueFactory = _ => 1 };
        Option<string?> engine = new("--engine") { Description = "words or vosk; without it words" };
        Option<string?> noise = new("--noise") { Description = "pink or babble" };
        Option<double> snr = new("--snr") { Description = "Speech above the noise, dB", DefaultValueFactory = _ => 15 };
        Option<string> missRate = new("--miss-rate") { Description = "Shares of wrong read-backs that the aide misses, parted by commas", DefaultValueFactory = _ => "0,0.1,0.5" };
        Option<string[]> voice = new("--voice") { Description = "flite:NAME or espeak:NAME, again for more; without it seven of them" };
        Option<string[]> clips = new("--clips") { Description = "A folder of recordings with a transcripts.tsv, again for more; made voices stand in for what nobody was recorded saying" };
        Option<int> material = new("--material") { Description = "Readings for each sign and voice that can be drawn", DefaultValueFactory = _ => 8 };
        Option<string> cache = new("--cache") { Description = "Folder where made voices and hearings are kept", DefaultValueFactory = _ => Path.Combine(Path.GetTempPath(), "handsfree-hearings") };
        Option<int> processes = new("--processes") { Description = "Processes", DefaultValueFactory = _ => 1 };
        Option<string> json = new("--json") { Description = "The file for the results", Required = true };
        Option<int?> part = new("--part") { Hidden = true };
        Option<string?> partFile = new("--part-file") { Hidden = true };
        Command command = new("dictations", "A simulated aide dictates; counts wrong values saved, first-try capture, prompts and times")
        {
            count, seed, engine, noise, snr, missRate, voice, clips, material, cache, processes, json, part, partFile,
        };
        command.SetAction(parsed => Run(
            new DictationOptions
            {
                Count = parsed.GetValue(count),
                Seed = parsed.GetValue(seed),
                Engine = parsed.GetValue(engine),
                Noise = parsed.GetValue(noise) is { } kind ? new RoomNoise(kind, parsed.GetValue(snr)) : null,
                MissRates = [.. parsed.GetValue(missRate)!.Split(',').Select(p => double.Parse(p, CultureInfo.InvariantCulture))],
                Voices = parsed.GetValue(voice) is { Length: > 0 } named ? named : null,
                Clips = parsed.GetValue(clips) ?? [],
                Material = parsed.GetValue(material),
                Cache = parsed.GetValue(cache)!,
                Processes = parsed.GetValue(processes),
                Part = parsed.GetValue(part),
                Json = parsed.GetValue(json)!,
            },
            parsed.GetValue(partFile)));
        return command;
    }

    private static int Run(DictationOptions options, string? partFile)
    {
        Stopwatch clock = Stopwatch.StartNew();
        IReadOnlyList<PlayedVisit>? visits;
        if (options is { Processes: > 1, Part: null })
        {
            visits = Parts.Run(options.Processes, options.Json);
        }
        else
        {
            (visits, string line) = DictationRun.Play(options, Console.Out);
            Console.WriteLine(line);
        }

        if (visits is null)
        {
            return 2;
        }

        if (partFile is not null)
        {
            File.WriteAllText(partFile, JsonSerializer.Serialize(visits));
            return 0;
        }

        Report(options, visits, clock.Elapsed);
        return 0;
    }

    private static void Report(DictationOptions options, IReadOnlyList<PlayedVisit> visits, TimeSpan took)
    {
        List<DictationSummary> summaries =
            [.. options.MissRates.Select(rate => DictationSummary.Of(rate, [.. visits.Where(v => v.MissRate == rate).Select(v => v.Result)]))];
        List<DictationRow> rows = [.. visits.SelectMany(v => v.Result.Rows).OrderBy(r => r.MissRate).ThenBy(r => r.Visit).ThenBy(r => r.Number)];
        List<Finding> findings = [.. visits.SelectMany(v => v.Result.Findings).OrderBy(f => f.Kind, StringComparer.Ordinal).ThenBy(f => f.MissRate).ThenBy(f => f.Visit)];
        foreach (DictationRow wrong in rows.Where(r => r.Verdict == Verdict.Wrong))
        {
            Console.WriteLine(FormattableString.Invariant($"WRONG, {wrong.MissRate} missed, visit {wrong.Visit}: {wrong.Truth} became {string.Join("; ", wrong.Saved)}"));
            foreach (string line in wrong.Exchange!)
            {
                Console.WriteLine("    " + line);
            }
        }

        foreach (var kind in findings.GroupBy(f => f.Kind))
        {
            Console.WriteLine($"{kind.Key}: {kind.Count()}");
        }

        summaries.ForEach(s => s.Write(Console.Out));
        Console.WriteLine(FormattableString.Invariant($"{rows.Count} dictations in {took.TotalSeconds:0} s, {rows.Count / took.TotalMinutes:0} a minute"));
        File.WriteAllText(options.Json, JsonSerializer.Serialize(new { options, summaries, seconds = took.TotalSeconds, findings, rows }, Indented));
    }
}
