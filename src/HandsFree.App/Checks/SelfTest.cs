using HandsFree.App.Composition;
using HandsFree.App.Hear;
using HandsFree.App.Hearing;
using HandsFree.App.Homes;
using HandsFree.App.Journals;
using HandsFree.Audio.Endpointing;
using HandsFree.Speech;
using HandsFree.Speech.Voice;
using HandsFree.Store.Journaling;

namespace HandsFree.App.Checks;

/// <summary>Whether this machine and this home have what a round needs.</summary>
internal sealed class SelfTest(GrammarShelf shelf, FileHearing hearing, ProgramPaths paths, HomeFolder folder, HomeOpening? home, TimeProvider time)
{
    /// <summary>All checks, one after the other.</summary>
    /// <param name="choice">The engine that was started, or why none was.</param>
    public IEnumerable<CheckResult> Run(EngineChoice choice)
    {
        yield return Engine(choice);
        if (choice.Recognizer is { } recognizer)
        {
            yield return Recording(recognizer);
        }

        yield return hearing.WhyNotBetter is { } why
            ? new("detector", CheckState.Warning, $"{why}; {paths.FetchAgain}")
            : new("detector", CheckState.Ok, hearing.DetectorName);
        yield return Voice();
        foreach (CheckResult result in Home())
        {
            yield return result;
        }

        yield return Folder();
        yield return Disk();
        yield return Journal();
        if (People() is { } people)
        {
            yield return people;
        }
    }

    private static CheckResult Engine(EngineChoice choice) => choice.Recognizer switch
    {
        null => new("engine", CheckState.Failed, choice.Line),
        { Name: EngineNames.Words } => new("engine", CheckState.Ok, choice.Line),
        _ => new("engine", CheckState.Warning, choice.Line),
    };

    private CheckResult Recording(IRecognizer recognizer)
    {
        SpeechSegment? segment = hearing.Speech(BundledClip.Read());
        Speech.Hearing heard = segment is null ? Speech.Hearing.Nothing : recognizer.Hear(segment.Samples, shelf.Of("readings"));
        string what = heard is { Outcome: HearingOutcome.Heard, Best: { } best } ? MeaningJson.Of(best) : $"{heard.Outcome}";
        return what == BundledClip.Meaning
            ? new("recording", CheckState.Ok, $"heard {what} in the recording that the program carries")
            : new("recording", CheckState.Failed, $"heard {what} where {BundledClip.Meaning} was said; this engine can't be used here");
    }

    private static CheckResult Voice()
    {
        (IVoice? voice, string? whyNone) = Voices.Best();
        if (voice is null)
        {
            return new("voice", CheckState.Warning, $"{whyNone}; read-backs are shown, not spoken");
        }

        try
        {
            TimeSpan spoken = voice.Speak("ready").Duration;
            return spoken > TimeSpan.Zero
                ? new("voice", CheckState.Ok, voice.Name)
                : new("voice", CheckState.Warning, $"{voice.Name} made no sound; read-backs are shown, not spoken");
        }
        catch (VoiceException failed)
        {
            return new("voice", CheckState.Warning, $"{failed.Message}; read-backs are shown, not spoken");
        }
    }

    private IEnumerable<CheckResult> Home()
    {
        if (home is null)
        {
            yield return new("home", CheckState.Ok, $"{folder.Path}: sealed; give a person and PIN to look into it too");
            yield break;
        }

        foreach (var error in home.Errors)
        {
            yield return new("home", CheckState.Failed, error.ToString());
        }

        if (home.TryGet(out Home? opened))
        {
            int residents = opened.Roster.Residents.Count;
            yield return residents > 0
                ? new("home", CheckState.Ok, $"{folder.Path}: {residents} residents")
                : new("home", CheckState.Warning, $"{folder.RosterFile} has no residents; write it before the first round");
        }
    }

    private CheckResult Folder()
    {
        try
        {
            HomeFolder.Make(folder.Path);
            string trial = Path.Combine(folder.Path, $".trial-{Environment.ProcessId}");
            using (new FileStream(trial, FileMode.Create, FileAccess.Write, FileShare.None, 1, FileOptions.DeleteOnClose))
            {
                return new("folder", CheckState.Ok, $"{folder.Path} can be written");
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new("folder", CheckState.Failed, $"{folder.Path} can't be written ({e.Message.ReplaceLineEndings(" ")}); name another with --home");
        }
    }

    private CheckResult Disk() => DiskEncryption.OfThisMachine()?.Of(folder.States) switch
    {
        true => new("disk", CheckState.Ok, "the disk with this device's secret is encrypted"),
        false => new("disk", CheckState.Warning, "the disk is not encrypted: a PIN protects the record from colleagues, not from who takes the disk; encrypt it"),
        null => new("disk", CheckState.Warning, "whether the disk is encrypted can't be told here: without that a PIN protects the record from colleagues, not from who takes the disk"),
    };

    // What else keeps the record from being opened, the check of the journal says.
    private CheckResult? People() => PeopleCheck.IsAnybodySetUp(folder, time) switch
    {
        true => new("people", CheckState.Ok, "a person and a PIN open the record"),
        false => new("people", CheckState.Warning, "nobody is set up: whoever uses this device opens the record"),
        null => null,
    };

    private CheckResult Journal()
    {
        if (!JournalFile.IsBegun(folder))
        {
            return new("journal", CheckState.Ok, "none yet; it is made with the first round");
        }

        (JournalVerdict? verdict, JournalError? error) = JournalVerification.Verify(folder.JournalFile, folder.States, signatures: false);
        return verdict switch
        {
            null => new("journal", CheckState.Failed, error!.Message),
            { Findings: [var first, ..] } => new("journal", CheckState.Failed, $"{folder.JournalFile}: {first}"),
            { KnownHere: false } => new("journal", CheckState.Failed, $"{folder.JournalFile}: written on another device"),
            _ => new("journal", CheckState.Ok, $"{verdict.Events} events, none missing, none changed"),
        };
    }
}
