using HandsFree.App.Composition;
using HandsFree.App.Demo;
using HandsFree.App.Demo.Outcome;
using HandsFree.App.Demo.Script;
using HandsFree.App.Hear;
using HandsFree.App.Homes;
using HandsFree.App.Session;
using HandsFree.App.Unlocking;
using HandsFree.Audio.Devices;
using HandsFree.Audio.Devices.Pulse;
using HandsFree.TestKit.Sound;

namespace HandsFree.Benchmarks.Live;

/// <summary>A shift of the made-up home, spoken into a null sink while "handsfree round" listens to its monitor. The program's own voice
/// comes back into the microphone as loud as it is played.</summary>
internal sealed class LiveShift
{
    private readonly DemoManifest manifest;
    private readonly ClipShelf clips;

    private LiveShift(DemoManifest manifest, ClipShelf clips) => (this.manifest, this.clips) = (manifest, clips);

    /// <summary>Reads the demo.</summary>
    /// <param name="folder">The folder of its recordings.</param>
    /// <param name="residents">Those who are visited; empty for all, and then the handover is asked too.</param>
    public static LiveShift Read(string folder, IReadOnlyCollection<string> residents)
    {
        (DemoManifest? manifest, string? broken) = DemoManifest.Read(folder);
        if (manifest is null || broken is not null)
        {
            throw new InvalidDataException(broken ?? "the demo has no manifest");
        }

        (ClipShelf? clips, string? unreadable) = ClipShelf.Read(folder, manifest.Clips);
        return new LiveShift(residents.Count == 0 ? manifest : manifest with
        {
            Visits = [.. manifest.Visits.Where(v => residents.Contains(v.Resident))],
            Expected = [.. manifest.Expected.Where(e => residents.Contains(e.Resident))],
            Handover = [],
        }, clips ?? throw new InvalidDataException(unreadable));
    }

    /// <summary>Plays the shift.</summary>
    /// <param name="server">The sound.</param>
    /// <param name="engine">The engine that hears.</param>
    /// <param name="folder">An empty folder for the home.</param>
    /// <param name="atMost">The aide leaves then in any case.</param>
    /// <param name="write">Takes a line of the transcript.</param>
    /// <param name="recorded">Whether both sinks are recorded, to measure the answers.</param>
    public LiveShiftResult Run(PulseServer server, string engine, string folder, TimeSpan atMost, Action<string> write, bool recorded = false)
    {
        HomeFolder home = new(Path.Combine(folder, "home"), Path.Combine(folder, "state"));
        Home made = MakeHome(home);
        server.Echo(PulseServer.Earpiece, PulseServer.Mouth);
        PulseSound sound = new(TimeProvider.System, server.Address);
        (IPlaybackStream? mouth, SoundFault? fault) = sound.OpenPlayback(PulseServer.Mouth);
        using IPlaybackStream open = mouth ?? throw new InvalidOperationException(fault!.Text);
        using RoundProcess round = RoundProcess.Start(server, home.Path, home.States, engine, TimeProvider.System);
        ListeningGrammars grammars = new(new GrammarShelf(Path.Combine(AppContext.BaseDirectory, "grammars")));
        LiveAide aide = new(new Aide(manifest, clips, new AideMind(grammars), made.Roster), clips, round, open, TimeProvider.System, write);
        using MonitorRecorder? heard = recorded ? new MonitorRecorder(sound, PulseServer.Microphone) : null;
        using MonitorRecorder? answered = recorded ? new MonitorRecorder(sound, $"{PulseServer.Earpiece}.monitor") : null;
        bool over = aide.Run(atMost);
        int? code = over ? round.WaitForEnd(TimeSpan.FromSeconds(30)) : null;
        foreach (string line in round.Lines)
        {
            write(line);
        }

        return new LiveShiftResult(code, Compare(home))
        {
            Answers = heard is null || answered is null ? [] : [.. AnswerTimes.Of(aide.Said, clips, grammars, heard.Stop(), answered.Stop())],
        };
    }

    /// <summary>Writes the made-up home, with its person, and gives it as it was before all of it was sealed.</summary>
    public Home MakeHome(HomeFolder home)
    {
        if (DemoHome.Write(home, manifest) is { } taken)
        {
            throw new InvalidOperationException(taken);
        }

        Home made = Home.Open(home, TimeZoneInfo.Utc).Home!;
        (HomeJournal? journal, string? error) = DemoPerson.SetUp(home, manifest.Aide, Around);
        (journal ?? throw new InvalidOperationException(error)).Dispose();
        return made;
    }

    private JournalComparison Compare(HomeFolder home)
    {
        (HomeJournal? journal, string? error) = HomeJournal.Open(home, new Unlocker(Around, null), DemoPerson.CredentialOf(manifest.Aide));
        using HomeJournal open = journal ?? throw new InvalidOperationException(error);
        return JournalComparison.Of(open.All(), manifest.Expected);
    }

    private static Surroundings Around => Surroundings.OfThisProcess();
}
