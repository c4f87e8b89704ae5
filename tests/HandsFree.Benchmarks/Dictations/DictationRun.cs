using HandsFree.App.Composition;
using HandsFree.App.Live;
using HandsFree.App.Hear;
using HandsFree.App.Hearing;
using HandsFree.App.Session;
using HandsFree.Audio.Endpointing;
using HandsFree.Benchmarks.Dictations.Counting;
using HandsFree.Benchmarks.Dictations.Playing;
using HandsFree.Benchmarks.Dictations.Saying;
using HandsFree.Benchmarks.Dictations.Sound;
using HandsFree.Speech;
using HandsFree.Speech.Voice;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.Benchmarks.Dictations;

/// <summary>Plays the visits of one process.</summary>
internal static class DictationRun
{
    private const int ProgressEvery = 10;

    /// <summary>Plays them; null and a line where no engine can hear.</summary>
    public static (IReadOnlyList<PlayedVisit>? Visits, string Line) Play(DictationOptions options, TextWriter progress)
    {
        using ServiceProvider services = ServiceMaker.Make(Surroundings.OfThisProcess(), null);
        ProgramPaths paths = services.GetRequiredService<ProgramPaths>();
        EngineChoice choice = services.GetRequiredService<Engines>().Start(options.Engine, "--engine", 1);
        if (!choice.TryGet(out IRecognizer? engine))
        {
            return (null, choice.Line);
        }

        using var kept = new KeptHearings(engine, Stamp.Of(engine.Name, paths), new HearingStore(options.Cache));
        using ISpeechDetector detector = DetectorChoice.Best(paths.Detector).Detector;
        GrammarShelf shelf = services.GetRequiredService<GrammarShelf>();
        var made = new MadeVoices(options.Voices ?? MadeVoices.Usual, Path.Combine(options.Cache, "voices"));
        Clips? clips = options.Clips.Count > 0 ? Clips.Read(options.Clips) : null;
        IVoiceBox voices = clips is null ? made : new ClipVoices(clips, made);
        var sayings = new Sayings(shelf);
        var drawn = new Repertoire(sayings, options.Material, options.Seed);
        IVoice? voice = Voices.Best().Voice;
        var visits = new Visits
        {
            Grammars = new ListeningGrammars(shelf),
            Sayings = sayings,
            Repertoire = clips is null ? drawn : new ClipRepertoire(clips, drawn),
            Voices = voices,
            Acoustics = new Acoustics(voices, options.Noise),
            Recognizer = kept,
            Detector = detector,
            Voice = voice is null ? null : new RememberedVoice(voice, int.MaxValue),
            Habits = new Habits(),
            Seed = options.Seed,
        };
        List<PlayedVisit> played = [];
        int part = options.Part ?? 0;
        for (int visit = part; visit < options.VisitCount; visit += options.Processes)
        {
            foreach (double missRate in options.MissRates)
            {
                played.Add(new PlayedVisit(missRate, visits.Play(visit, missRate)));
            }

            if (visit / options.Processes % ProgressEvery == ProgressEvery - 1)
            {
                progress.WriteLine($"part {part}: {played.Sum(p => p.Result.Rows.Count)} dictations, {kept.Heard} heard, {kept.Known} known");
            }
        }

        return (played, FormattableString.Invariant($"{choice.Line}; {kept.Heard} hearings took {kept.HearingTime.TotalSeconds:0} s, {kept.Known} were known"));
    }
}
