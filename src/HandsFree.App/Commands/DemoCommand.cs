using System.CommandLine;
using System.Runtime.InteropServices;
using HandsFree.App.Composition;
using HandsFree.App.Demo;
using HandsFree.App.Demo.Outcome;
using HandsFree.App.Demo.Script;
using HandsFree.App.Hear;
using HandsFree.App.Hearing;
using HandsFree.App.Homes;
using HandsFree.App.Session;
using HandsFree.Audio.Endpointing;
using HandsFree.Language.Grammars;
using HandsFree.Speech;
using HandsFree.Speech.Voice;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>"handsfree demo": a whole small shift in a made-up home, from recordings to the handover.</summary>
internal sealed class DemoCommand
{
    private readonly CommandHost host;
    private readonly EngineOptions engine = new();
    private readonly Option<bool> fast = new("--fast") { Description = "No waiting: as fast as the machine can hear" };
    private readonly Option<string?> record = new("--record")
    {
        Description = "Write the whole exchange there as WAV and text",
        HelpName = "FOLDER",
    };

    private DemoCommand(CommandHost host) => this.host = host;

    public static Command Make(CommandHost host)
    {
        DemoCommand demo = new(host);
        Command command = new(
            "demo", "A whole small shift in a made-up home, from recordings; with --home it leaves the home there, else nothing");
        demo.engine.AddTo(command);
        command.Options.Add(demo.fast);
        command.Options.Add(demo.record);
        return host.Runs(command, demo.Run);
    }

    private int Run(ParseResult parsed, IServiceProvider services)
    {
        string folder = DemoFolder();
        (DemoManifest? manifest, string? broken) = DemoManifest.Read(folder);
        if (manifest is null || broken is not null)
        {
            return host.Refuse(broken ?? "the demo has no manifest");
        }

        (ClipShelf? clips, string? unreadable) = ClipShelf.Read(folder, manifest.Clips);
        if (clips is null)
        {
            return host.Refuse(unreadable ?? "the demo has no recordings");
        }

        string? named = parsed.GetValue(host.Home);
        using var temporary = named is null ? new TemporaryFolder() : null;
        HomeFolder home = named is null
            ? new HomeFolder(temporary!.Path, Path.Combine(temporary.Path, "state"))
            : new HomeFolder(named, services.GetRequiredService<ProgramPaths>().States);
        if (DemoHome.Write(home, manifest) is { } taken)
        {
            return host.Refuse(taken);
        }

        HomeOpening opening = Home.Open(home, host.Surroundings.Time.LocalTimeZone);
        if (!opening.TryGet(out Home? opened))
        {
            return host.Refuse(string.Join("; ", opening.Errors));
        }

        EngineChoice choice = engine.Start(parsed, services);
        if (!choice.TryGet(out IRecognizer? recognizer))
        {
            return host.Refuse(choice.Line);
        }

        using (recognizer)
        {
            host.Surroundings.Out.WriteLine(choice.Line);
            return Play(parsed, services, new DemoParts(manifest, clips, opened, recognizer), kept: named is not null);
        }
    }

    private int Play(ParseResult parsed, IServiceProvider services, DemoParts parts, bool kept)
    {
        TextWriter output = host.Surroundings.Out;
        (HomeJournal? journal, string? error) = DemoPerson.SetUp(parts.Home.Folder, parts.Manifest.Aide, host.Surroundings);
        if (journal is null)
        {
            return host.Refuse(error!);
        }

        using HomeJournal open = journal;
        open.Desk.KeepRules(parts.Home);
        DetectorChoice detector = DetectorChoice.Best(services.GetRequiredService<ProgramPaths>().Detector);
        using ISpeechDetector speech = detector.Detector;
        (IVoice? voice, string? noVoice) = Voices.Best();
        string? recordFolder = parsed.GetValue(record);
        DemoRecording? recording = recordFolder is null ? null : new DemoRecording();
        void Write(string line)
        {
            output.WriteLine(line);
            recording?.Write(line);
        }

        foreach (string remark in new[] { detector.WhyNotBetter, noVoice }.OfType<string>())
        {
            Write(remark);
        }

        Write($"A made-up home with {parts.Manifest.Visits.Count} residents. The aide: recordings of synthetic voices. The program: {voice?.Name ?? "text only"}.");
        Write($"The journal is sealed; {parts.Manifest.Aide} unlocks it with the passphrase '{DemoPerson.Passphrase}' (also in the file {DemoPerson.FileName} of the home).");
        Write("Each line: the time there, who, what. \"saved #N\" comes once entry N of the journal is on the disk.");
        foreach (string changed in parts.Clips.Changed)
        {
            Write(changed);
        }

        using CancellationTokenSource stop = new();
        using var interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, signal => Stop(signal, stop));
        using var terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, signal => Stop(signal, stop));
        DemoRun run = new()
        {
            Manifest = parts.Manifest,
            Clips = parts.Clips,
            Home = parts.Home,
            Journal = open,
            Recognizer = parts.Recognizer,
            Detector = speech,
            Voice = voice,
            Grammars = new ListeningGrammars(services.GetRequiredService<GrammarShelf>()),
            Transcript = new DemoTranscript(Write),
            Recording = recording,
            RealTime = host.Surroundings.Time,
            Fast = parsed.GetValue(fast),
            Log = kept ? services.GetRequiredService<ProgramLog>() : null,
        };
        try
        {
            bool asExpected = DemoReport.Write(Write, parts, run.Run(stop.Token), open.All(), kept);
            return recordFolder is not null && recording!.Save(recordFolder) is { } unwritten ? host.Refuse(unwritten)
                : asExpected ? ExitCodes.Done : ExitCodes.CheckFailed;
        }
        catch (OperationCanceledException)
        {
            Write("Stopped before the end.");
            return ExitCodes.CheckFailed;
        }
        catch (Exception e) when (e is InvalidDataException or GrammarException)
        {
            return host.Refuse(e.Message);
        }
    }

    // Ended by hand: the session ends in order, and the temporary home is removed.
    private static void Stop(PosixSignalContext signal, CancellationTokenSource stop)
    {
        signal.Cancel = true;
        stop.Cancel();
    }

    private string DemoFolder()
    {
        string beside = Path.Combine(host.Surroundings.ProgramFolder, DemoParts.FolderName);
        return host.Surroundings.Variable("HANDSFREE_ROOT") is { } root && Directory.Exists(Path.Combine(root, DemoParts.FolderName))
            ? Path.Combine(root, DemoParts.FolderName)
            : beside;
    }
}
