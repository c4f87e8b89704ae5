using HandsFree.App.Composition;
using HandsFree.App.Demo;
using HandsFree.App.Demo.Room;
using HandsFree.App.Demo.Script;
using HandsFree.App.Hear;
using HandsFree.App.Homes;
using HandsFree.App.Session;
using HandsFree.App.Unlocking;
using HandsFree.Audio.Endpointing;
using HandsFree.Core.Journal;
using HandsFree.Speech.Voice;

namespace HandsFree.Benchmarks.Live;

/// <summary>A long shift in one session: the demo's visits again and again, in the room's time, with a microphone that goes and comes.
/// Everything is the product's but the engine, which knows what was said.</summary>
internal sealed class LongShift
{
    private const int EnoughMoves = 1_000_000;

    public required TimeSpan Length { get; init; }

    public required int Losses { get; init; }

    /// <summary>The folder of the demo's recordings.</summary>
    public required string Demo { get; init; }

    /// <summary>Takes a line after each hour of the room's time.</summary>
    public required Action<string> Write { get; init; }

    /// <summary>Runs it.</summary>
    /// <param name="folder">An empty folder for the home.</param>
    public LongShiftResult Run(string folder)
    {
        (DemoManifest? manifest, string? broken) = DemoManifest.Read(Demo);
        DemoManifest script = manifest is null || broken is not null ? throw new InvalidDataException(broken) : manifest;
        (ClipShelf? clips, string? unreadable) = ClipShelf.Read(Demo, script.Clips);
        HomeFolder home = new(Path.Combine(folder, "home"), Path.Combine(folder, "state"));
        if (DemoHome.Write(home, script) is { } taken)
        {
            throw new InvalidOperationException(taken);
        }

        Surroundings around = Surroundings.OfThisProcess();
        Home opened = Home.Open(home, TimeZoneInfo.Utc).Home!;
        (HomeJournal? made, string? error) = HomeJournal.Open(home, new Unlocker(around, null));
        using HomeJournal journal = made ?? throw new InvalidOperationException(error);

        DateTimeOffset begins = new(2026, 3, 3, 13, 0, 0, TimeSpan.Zero);
        DemoClock clock = new(begins, opened.Settings.TimeZone);
        ListeningGrammars grammars = new(new GrammarShelf(Path.Combine(AppContext.BaseDirectory, "grammars")));
        AideEars ears = new();
        using OracleRecognizer oracle = new();
        using DemoSpeaker speaker = new(clock);
        Aide aide = new(Repeated(script), clips ?? throw new InvalidDataException(unreadable), new AideMind(grammars), opened.Roster, EnoughMoves);
        Watchers watchers = new([ears], [oracle]);
        using DemoRoom room = new(aide, ears, clips, speaker, clock, new Pace(TimeProvider.System, fast: true), watchers);
        using FlakyMicrophone microphone = new(room, Length / (Losses + 1), TimeSpan.FromSeconds(3));
        using ISpeechDetector detector = DetectorChoice.Best(new ProgramPaths(around).Detector).Detector;
        HourWatch hours = new(begins, Length, Write);
        using SessionLoop loop = new(new SessionParts
        {
            Machine = HomeSession.Machine(opened, oracle, grammars, clock.GetLocalNow()),
            Journal = journal.Events,
            Past = [],
            Microphone = microphone,
            Loudspeaker = speaker,
            Voice = Voices.Best().Voice is { } voice ? new App.Live.RememberedVoice(voice) : null,
            Detector = detector,
            Recognizer = oracle,
            Grammars = grammars,
            Time = clock,
            Watcher = new Watchers([ears, hours], []),
            Settings = HomeSession.Settings(opened),
        });
        (room.Session, microphone.Session) = (loop.Queue, loop);
        hours.WhenOver = () => loop.Type("goodbye");
        SessionEnd end = loop.Run(script.Aide, "long", CancellationToken.None);
        return new LongShiftResult(end, journal.All().OfType<ReadingRecorded>().Count(), microphone.Frames, microphone.Lost, microphone.Losses, loop.Queue.Late, hours.Memory);
    }

    // The aide's script without an end; the watch ends the shift. Rests are left out: at a second visit in a round nothing is to be rested for.
    private DemoManifest Repeated(DemoManifest script)
    {
        int times = (int)(Length / TimeSpan.FromMinutes(1)) + 1;
        DemoVisit[] visits = [.. script.Visits.Select(v => v with { Steps = [.. v.Steps.Where(s => s is not (DemoStep.Rest or DemoStep.Wait or DemoStep.Word))] })];
        return script with { Visits = [.. Enumerable.Repeat(visits, times).SelectMany(v => v)], Handover = [] };
    }
}
