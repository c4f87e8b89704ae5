using HandsFree.App.Demo;
using HandsFree.App.Demo.Room;
using HandsFree.App.Homes;
using HandsFree.App.Session;
using HandsFree.App.Unlocking;
using HandsFree.Audio.Endpointing;
using HandsFree.Benchmarks.Dictations.Counting;
using HandsFree.Benchmarks.Dictations.Saying;
using HandsFree.Benchmarks.Dictations.Sound;
using HandsFree.Benchmarks.Journals;
using HandsFree.Core.Residents;
using HandsFree.Speech;
using HandsFree.Speech.Voice;

namespace HandsFree.Benchmarks.Dictations.Playing;

/// <summary>Plays visits: the simulated aide on one side, the product's session loop with a journal on disk on the other.</summary>
internal sealed class Visits
{
    private static readonly DateTimeOffset Morning = new(2026, 3, 2, 8, 0, 0, TimeSpan.Zero);

    /// <summary>Grammars that the program listens with.</summary>
    public required ListeningGrammars Grammars { get; init; }

    /// <summary>Ways of saying.</summary>
    public required Sayings Sayings { get; init; }

    /// <summary>What is said.</summary>
    public required IRepertoire Repertoire { get; init; }

    /// <summary>Who says it.</summary>
    public required IVoiceBox Voices { get; init; }

    /// <summary>How it sounds.</summary>
    public required Acoustics Acoustics { get; init; }

    /// <summary>The engine.</summary>
    public required IRecognizer Recognizer { get; init; }

    /// <summary>Finds the speech in the sound.</summary>
    public required ISpeechDetector Detector { get; init; }

    /// <summary>The program's voice; null for none.</summary>
    public required IVoice? Voice { get; init; }

    /// <summary>How the aide behaves.</summary>
    public required Habits Habits { get; init; }

    /// <summary>Of all that is drawn.</summary>
    public required int Seed { get; init; }

    /// <summary>Plays one visit; the same number, miss rate and seed give the same visit.</summary>
    public VisitResult Play(int visit, double missRate)
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("handsfree-dictations-");
        try
        {
            return Play(visit, Habits with { MissRate = missRate }, InventedHome.In(folder.FullName));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private VisitResult Play(int visit, Habits habits, Home home)
    {
        using HomeJournal journal = HomeJournal.Open(home.Folder, new Unlocker(Nobody.Around, null)) is var (opened, error) && opened is not null ? opened : throw new IOException(error);
        Random random = new(Steady.Number(Seed, visit));
        string voice = Voices.Names[random.Next(Voices.Names.Count)];
        string residentVoice = Voices.Names.Count > 1 ? Voices.Names.Where(v => v != voice).ElementAt(random.Next(Voices.Names.Count - 1)) : voice;
        Resident resident = home.Roster.Residents[random.Next(home.Roster.Residents.Count)];
        var clock = new DemoClock(Morning, TimeZoneInfo.Utc);
        var scribe = new SessionScribe(habits.MissRate, visit, voice, clock);
        var ears = new AideEars();
        var plan = new VisitPlan(Repertoire, habits, voice, Sayings, random);
        var aide = new SimulatedAide(Sayings, habits, plan, resident, voice, residentVoice, random, scribe);
        using var speaker = new DemoSpeaker(clock);
        using var room = new AideRoom(aide, ears, Acoustics, speaker, clock, scribe);
        using var loop = new SessionLoop(new SessionParts
        {
            Machine = HomeSession.Machine(home, Recognizer, Grammars, Morning),
            Journal = journal.Events,
            Microphone = room,
            Loudspeaker = speaker,
            Voice = Voice,
            Detector = Detector,
            Recognizer = Recognizer,
            Grammars = Grammars,
            Time = clock,
            Watcher = new Watchers([scribe, ears], []),
            Settings = HomeSession.Settings(home),
        });
        room.Session = loop.Queue;
        SessionEnd end = loop.Run("aide", $"visit-{visit}", CancellationToken.None);
        if (end != SessionEnd.Goodbye)
        {
            scribe.Found("no end", aide.GaveUp ?? "nothing happened for minutes");
        }
        else if (!plan.IsDone)
        {
            scribe.Found("ended early", "the round ended before the aide had done her plan");
        }

        aide.Finish();
        return scribe.Result();
    }
}
