using System.CommandLine;
using System.Runtime.InteropServices;
using HandsFree.App.Composition;
using HandsFree.App.Hear;
using HandsFree.App.Hearing;
using HandsFree.App.Homes;
using HandsFree.App.Live;
using HandsFree.App.Screens;
using HandsFree.App.Session;
using HandsFree.App.Unlocking;
using HandsFree.Audio.Devices;
using HandsFree.Audio.Endpointing;
using HandsFree.Core.Files;
using HandsFree.Core.Journal;
using HandsFree.Speech;
using HandsFree.Speech.Voice;
using HandsFree.Store.Journaling;
using Microsoft.Extensions.DependencyInjection;
using Key = Terminal.Gui.Input.Key;

namespace HandsFree.App.Commands;

/// <summary>"handsfree round": the live round.</summary>
internal sealed class RoundCommand
{
    private readonly CommandHost host;
    private readonly EngineOptions engine = new();
    private readonly SoundOptions sound = new();
    private readonly Option<bool> keys = new("--keys") { Description = "No microphone: everything is typed; what is typed means what it means spoken" };
    private readonly Option<bool> plain = new("--plain") { Description = "Lines instead of a screen; without names and values" };
    private readonly Option<bool> texts = new("--texts") { Description = "With --plain: also everything that the program says, values and names among it" };
    private readonly Option<bool> json = new("--json") { Description = "One JSON object a line for everything that happens, values and names among it" };
    private readonly Option<bool> press = new("--press-to-talk") { Description = "The microphone is heard only after its key, for one utterance (default with the engine vosk)" };
    private readonly Option<bool> open = new("--open-microphone") { Description = "The microphone is heard all the time (default with the other engines)" };

    private RoundCommand(CommandHost host) => this.host = host;

    public static Command Make(CommandHost host)
    {
        RoundCommand round = new(host);
        Command command = new("round", "The round: hears readings live, reads back, saves what is confirmed")
        {
            round.keys, round.plain, round.texts, round.json, round.press, round.open,
        };
        round.sound.AddTo(command);
        round.engine.AddTo(command);
        return host.Runs(command, round.Run);
    }

    private int Run(ParseResult parsed, IServiceProvider services)
    {
        if (parsed.GetValue(press) && parsed.GetValue(open))
        {
            return host.Refuse("--press-to-talk and --open-microphone exclude each other; give one of them");
        }

        if (!services.GetRequiredService<HomeOpening>().TryGet(out Home? home))
        {
            return host.RefuseHome(services.GetRequiredService<HomeOpening>());
        }

        if (home.Roster.Residents.Count == 0)
        {
            return host.Refuse($"{home.Folder.RosterFile} has no residents; write it, or name another folder with --home");
        }

        (SoundSettings settings, IReadOnlyList<FileError> errors) = sound.Settings(parsed, services);
        if (errors.Count > 0)
        {
            return host.RefuseAll(errors.Select(e => e.ToString()));
        }

        (HomeJournal? journal, string? error) = HomeJournal.Open(home.Folder, services.GetRequiredService<Unlocker>(), forSession: true);
        if (journal is null)
        {
            return host.Refuse(error!);
        }

        using (journal)
        {
            // Without people nothing is sealed from anybody, nobody signs and nobody is asked for a PIN: no round of a home begins so.
            if (journal.Holder is null)
            {
                return host.Refuse("nobody is set up yet, so nothing would be protected; set a supervisor up first: handsfree people add PERSON --role supervisor");
            }

            EngineChoice? choice = parsed.GetValue(keys) ? null : engine.Start(parsed, services);
            if (choice is { Recognizer: null })
            {
                return host.Refuse($"{choice.Line}; or go round by keys alone: handsfree round --keys");
            }

            using IRecognizer recognizer = choice?.Recognizer ?? new DeafRecognizer();
            try
            {
                journal.Desk.KeepRules(home);
                return Go(parsed, services, home, journal, recognizer, choice?.Line, settings);
            }
            catch (Exception e) when (e is JournalWriteException or JournalReadException or InvalidDataException)
            {
                return host.Refuse(e.Message);
            }
        }
    }

    private int Go(
        ParseResult parsed, IServiceProvider services, Home home, HomeJournal journal, IRecognizer recognizer, string? engineLine, SoundSettings settings)
    {
        HomeClock time = new(host.Surroundings.Time, home.Settings.TimeZone);
        DetectorChoice detector = DetectorChoice.Best(services.GetRequiredService<ProgramPaths>().Detector);
        using ISpeechDetector speech = detector.Detector;
        (IVoice? voice, string? noVoice) = Voices.Best();
        (ISoundSystem? system, string? noSound) = SoundSystems.Open(time, settings.System);
        using LiveSound live = LiveSound.Open(system, noSound, settings, withMicrophone: !parsed.GetValue(keys), time);
        string?[] remarks = [engineLine, detector.WhyNotBetter, noVoice, .. live.Remarks];
        foreach (string remark in remarks.OfType<string>())
        {
            host.Surroundings.Error.WriteLine(remark);
        }

        IReadOnlyList<JournalEvent> past = journal.Present();
        RoundBoard board = new(home, past);
        if (!TryKey(settings.TalkKey, out Key? foot))
        {
            return host.Refuse($"{home.Folder.SoundFile}: \"talkKey\" is \"{settings.TalkKey}\", which is no key; write one such as \"PageDown\" or \"F9\"");
        }

        using CancellationTokenSource stop = new();
        using var interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, signal => Stop(signal, stop));
        using var terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, signal => Stop(signal, stop));
        using var hangUp = PosixSignalRegistration.Create(PosixSignal.SIGHUP, signal => Stop(signal, stop));
        RoundRun run = new()
        {
            Home = home,
            Journal = journal,
            Past = past,
            Recognizer = recognizer,
            Detector = speech,
            Voice = voice is null ? null : new RememberedVoice(voice),
            Grammars = new ListeningGrammars(services.GetRequiredService<GrammarShelf>()),
            Sound = live,
            Screen = Steady(new BoardAndScreen(board, Screen(parsed, board, time, foot)), parsed, board, services.GetRequiredService<ProgramLog>()),
            Log = new SessionLog(services.GetRequiredService<ProgramLog>()),
            Time = time,
            Aide = journal.Holder?.Person ?? home.Settings.Aide,
            PressToTalk = parsed.GetValue(press) || (!parsed.GetValue(open) && HomeSession.IsWeak(recognizer)),
        };
        SessionEnd? end;
        try
        {
            end = run.Run(stop);
        }
        catch (InvalidOperationException broken)
        {
            ProgramLog log = services.GetRequiredService<ProgramLog>();
            log.Bug(broken);
            return host.Refuse($"the round was stopped by an error of the program (written into {log.File}). Start again. What was saved is safe");
        }

        if (end is null)
        {
            host.Surroundings.Error.WriteLine("Stopped. What was saved stays; the round goes on at the next start.");
        }

        return ExitCodes.Done;
    }

    private SteadyScreen Steady(IRoundScreen screen, ParseResult parsed, RoundBoard board, ProgramLog log)
    {
        Surroundings around = host.Surroundings;
        return new SteadyScreen(
            screen, () => new BoardAndScreen(board, new PlainScreen(board, around.In, around.Out, parsed.GetValue(texts))),
            why =>
            {
                log.Bug(why);
                around.Error.WriteLine($"The screen failed (written into {log.File}). The round goes on in plain lines: speak, or type and press Enter.");
            });
    }

    private IRoundScreen Screen(ParseResult parsed, RoundBoard board, TimeProvider time, Key? foot)
    {
        Surroundings around = host.Surroundings;
        return parsed.GetValue(json) ? new JsonScreen(board, around.In, around.Out)
            : parsed.GetValue(plain) || !around.IsInteractive ? new PlainScreen(board, around.In, around.Out, parsed.GetValue(texts))
            : new TerminalScreen(board, time, foot);
    }

    private static bool TryKey(string? name, out Key? key)
    {
        key = null;
        return name is null || Key.TryParse(name, out key);
    }

    // Ended by hand: the session ends in order, and the terminal is restored.
    private static void Stop(PosixSignalContext signal, CancellationTokenSource stop)
    {
        signal.Cancel = true;
        stop.Cancel();
    }
}
