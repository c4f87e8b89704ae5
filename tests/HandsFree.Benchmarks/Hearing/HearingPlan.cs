using System.Diagnostics;
using HandsFree.App.Hear;
using HandsFree.App.Hearing;
using HandsFree.Benchmarks.Microphone;
using HandsFree.Benchmarks.Noise;
using HandsFree.Benchmarks.Recordings;
using HandsFree.Benchmarks.Results;
using HandsFree.Language.Grammars;
using HandsFree.Speech;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.Benchmarks.Hearing;

/// <summary>What is to be heard, and how.</summary>
internal sealed record HearingPlan
{
    /// <summary>Folders of recordings.</summary>
    public required IReadOnlyList<string> Folders { get; init; }

    /// <summary>One state for all, or null.</summary>
    public required string? State { get; init; }

    /// <summary>A grammar for all, or null.</summary>
    public required string? GrammarFile { get; init; }

    /// <summary>Only each Nth.</summary>
    public required int Every { get; init; }

    /// <summary>Of one hearing.</summary>
    public required int Threads { get; init; }

    /// <summary>Kind of noise, or null.</summary>
    public required string? Noise { get; init; }

    /// <summary>Speech above noise, dB.</summary>
    public required double SnrDb { get; init; }

    /// <summary>What room and microphone do, or null.</summary>
    public required MicrophoneFaults? Microphone { get; init; }

    /// <summary>Of noise and room.</summary>
    public required int Seed { get; init; }

    /// <summary>The tables of all folders.</summary>
    /// <exception cref="InvalidDataException">One can't be used, or two folders have one name: rows are known by folder and file.</exception>
    public IReadOnlyList<Transcript>[] Read()
    {
        IReadOnlyList<Transcript>[] folders = [.. Folders.Select(TranscriptTable.Read)];
        return folders.GroupBy(f => f[0].SetName).FirstOrDefault(g => g.Count() > 1) is { } twice
            ? throw new InvalidDataException($"two folders are named {twice.Key}: their recordings could not be told apart in the result; hear them one by one")
            : folders;
    }

    /// <summary>Hears everything; writes a line for each recording that was not heard as it was meant.</summary>
    /// <exception cref="InvalidDataException">An input that can't be used, in one line.</exception>
    public HearingResult Run(IRecognizer recognizer, IServiceProvider services, TimeSpan loading, TextWriter output)
    {
        IReadOnlyList<Transcript>[] folders = Read();
        HearingRun run = new(recognizer, services.GetRequiredService<FileHearing>(), GrammarOf(services.GetRequiredService<GrammarShelf>()),
            new SoundMaker(Microphone, Noise is null ? null : new NoiseMaker(Noise, SnrDb, Seed), Seed));
        foreach (IReadOnlyList<Transcript> folder in folders)
        {
            run.Check(folder, Every);
        }

        DateTimeOffset date = services.GetRequiredService<TimeProvider>().GetUtcNow();
        List<HeardRow> rows = [];
        foreach (HeardRow row in folders.SelectMany(folder => run.Hear(folder, Every)))
        {
            rows.Add(row);
            if (HearingReport.Line(row) is { } line)
            {
                output.WriteLine(line);
            }
        }

        return new()
        {
            Version = HearingResult.CurrentVersion,
            Engine = recognizer.Name,
            Date = date,
            Sets = [.. folders.Select(f => f[0].SetName)],
            Every = Every,
            Threads = Threads,
            ListeningFor = State ?? Path.GetFileName(GrammarFile),
            Noise = Path.GetFileName(Noise),
            SnrDb = Noise is null ? null : SnrDb,
            Seed = Seed,
            Microphone = Microphone?.Text,
            Host = HostFacts.Here,
            LoadSeconds = loading.TotalSeconds,
            PeakMemoryMebibytes = PeakMemory(),
            Rows = rows,
        };
    }

    /// <summary>The same as arguments of "hearing".</summary>
    public IEnumerable<string> Arguments()
    {
        (string Name, string? Value)[] options =
        [
            ("--listening-for", State), ("--grammar", GrammarFile), ("--every", $"{Every}"), ("--threads", $"{Threads}"), ("--noise", Noise),
            ("--snr", FormattableString.Invariant($"{SnrDb}")), ("--microphone", Microphone?.Text), ("--seed", $"{Seed}"),
        ];
        return [.. Folders, .. options.Where(o => o.Value is not null).SelectMany(o => (string[])[o.Name, o.Value!])];
    }

    private static double PeakMemory()
    {
        using Process own = Process.GetCurrentProcess();
        return own.PeakWorkingSet64 / (1024.0 * 1024);
    }

    private Func<Transcript, (Grammar, string)> GrammarOf(GrammarShelf shelf)
    {
        if (GrammarFile is not null)
        {
            Grammar own = Grammar.Load(GrammarFile);
            return _ => (own, Path.GetFileName(GrammarFile));
        }

        if (State is not null && !GrammarShelf.States.Contains(State))
        {
            throw new InvalidDataException($"--listening-for {State}: no such state; one of {string.Join(", ", GrammarShelf.States)}");
        }

        return said => (shelf.Of(State ?? said.State), State ?? said.State);
    }
}
