using HandsFree.Core.Dialogue;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;

namespace HandsFree.App.Demo.Script;

/// <summary>The aide of the demo: an actor, not a tape. She listens to what is said and what is awaited, and chooses the clip that
/// answers it, so that a mishearing costs a turn and never shifts the rest.</summary>
/// <param name="manifest">What she means to do.</param>
/// <param name="clips">Her voice.</param>
/// <param name="mind">What she knows about words.</param>
/// <param name="roster">The residents, by whose names she knows them.</param>
/// <param name="mostMoves">She gives up after so many.</param>
internal sealed class Aide(DemoManifest manifest, ClipShelf clips, AideMind mind, Roster roster, int mostMoves = 600)
{
    private const int MostTimes = 12;

    private static readonly string[] Corrections = ["no", "no it is", "change it to"];

    private readonly Dictionary<string, int> saidInStep = [];
    private int visit;
    private int step;
    private int questions;
    private int moves;
    private bool atBed;
    private bool nameAgreed;
    private bool breathsReadBack;
    private string lastAnswer = "no";

    private DemoVisit? Visit => visit < manifest.Visits.Count ? manifest.Visits[visit] : null;

    private DemoStep? Step => atBed && Visit is { } here && step < here.Steps.Count ? here.Steps[step] : null;

    private string Voice => Visit is { } here ? clips.Named(here.Room).Voice : "";

    /// <summary>What she means the program to record in this step; null where nothing.</summary>
    private Reading? Meant => Step switch
    {
        DemoStep.Measure s => mind.Reading(s.Meant ?? clips.Named(s.Say).Text),
        DemoStep.Count s => mind.Reading(s.Meant),
        _ => null,
    };

    // Two counts are read back after one count step, one after the other.
    private Reading? MeantOf(VitalSign? sign) =>
        Step is DemoStep.Count { Breaths: { } breaths } && sign == VitalSign.Respirations
            ? mind.Reading($"respirations {clips.Named(breaths).Text} in sixty seconds")
            : Meant;

    /// <summary>Her turn.</summary>
    /// <param name="prompt">All that the program has said since she last spoke; empty where it said nothing.</param>
    /// <param name="listening">What is listened for now.</param>
    public AideMove Next(string prompt, Listening listening)
    {
        Notice(prompt);
        return moves > mostMoves ? new AideMove.Leave() : listening.Kind switch
        {
            ListeningKind.Identity or ListeningKind.SecondIdentifier => AtTheDoor(prompt),
            ListeningKind.YesNo or ListeningKind.NowOrBefore => YesOrNo(prompt),
            ListeningKind.Readings => AtTheBed(listening.Awaited is not null),
            ListeningKind.Confirmation => Confirm(prompt, listening.Awaited),
            ListeningKind.Value => SayDigits(prompt, listening.Awaited),
            ListeningKind.Count when listening.AnswerAwaited && Step is DemoStep.Count counting => SayCount(counting, listening.Awaited),
            ListeningKind.Handover => AskNext(prompt),
            _ => new AideMove.Wait(),
        };
    }

    // Then she goes on with what comes next, and the journal is not what it should be.
    private bool TriedLong => saidInStep.Values.Sum() > MostTimes;

    // What she hears tells her whether what she was at is done.
    private void Notice(string prompt)
    {
        bool done = Step switch
        {
            DemoStep.Count { Breaths: not null } => breathsReadBack && (prompt.Contains("Saved.", StringComparison.Ordinal) || prompt.Contains("Nothing open.", StringComparison.Ordinal)),
            DemoStep.Measure or DemoStep.Count or DemoStep.NotTaken => prompt.Contains("Saved.", StringComparison.Ordinal) || prompt.Contains("Nothing open.", StringComparison.Ordinal),
            DemoStep.Guess => prompt.Contains("guess can't be saved", StringComparison.Ordinal),
            DemoStep.Chat => saidInStep.Count > 0,
            DemoStep.Wait s => prompt.Contains(s.Hears, StringComparison.Ordinal),
            DemoStep.Word s => prompt.Contains(s.Hears, StringComparison.Ordinal),
            DemoStep.Rest => prompt.Contains("Now the ", StringComparison.Ordinal),
            _ => false,
        };
        breathsReadBack = !done && (breathsReadBack || prompt.Contains("Respirations,", StringComparison.Ordinal)) && Step is DemoStep.Count;
        if (done || (atBed && TriedLong))
        {
            step++;
            saidInStep.Clear();
        }
    }

    private AideMove AtTheDoor(string prompt)
    {
        if (atBed || TriedLong)
        {
            (visit, step, atBed, nameAgreed) = (visit + 1, 0, false, false);
            saidInStep.Clear();
        }

        if (nameAgreed && Visit is { } here && !prompt.Contains("No readings", StringComparison.Ordinal))
        {
            return SayNamed(here.Born);
        }

        nameAgreed = false;
        return Visit is { } next ? SayNamed(next.Room)
            : questions < manifest.Handover.Count ? AskNext(prompt)
            : Say("goodbye");
    }

    private AideMove.Speak YesOrNo(string prompt)
    {
        string name = Visit is { } here ? roster.ById(here.Resident)?.Name ?? "" : "";
        bool asksName = prompt.Contains("Look first", StringComparison.Ordinal) || prompt.Contains("Is this", StringComparison.Ordinal);
        bool? yes = prompt switch
        {
            _ when asksName => prompt.Contains(name, StringComparison.OrdinalIgnoreCase),
            _ when Step is DemoStep.NotTaken missing => Plain(prompt).Contains(Plain(clips.Named(missing.Say).Text), StringComparison.Ordinal),
            _ when prompt.Contains("Try again", StringComparison.Ordinal) || prompt.Contains("came back", StringComparison.Ordinal)
                || prompt.Contains("second person", StringComparison.Ordinal) => true,
            _ when prompt.Length == 0 || prompt.Contains("You can say", StringComparison.Ordinal) => null,
            _ => false,
        };
        nameAgreed = nameAgreed || (asksName && yes == true);
        lastAnswer = yes switch { true => "yes", false => "no", null => lastAnswer };
        return Say(lastAnswer);
    }

    private AideMove AtTheBed(bool recheckWaits)
    {
        if (!atBed)
        {
            (atBed, nameAgreed) = (true, false);
            saidInStep.Clear();
        }

        step += Step is DemoStep.Rest && !recheckWaits ? 1 : 0;
        return Step switch
        {
            DemoStep.Rest or DemoStep.Wait => new AideMove.Wait(),
            DemoStep.Measure s => SayNamed(s.Say),
            DemoStep.Count s => SayNamed(s.Say),
            DemoStep.Guess s => SayNamed(s.Say),
            DemoStep.NotTaken s => SayNamed(s.Say),
            DemoStep.Chat s => SayNamed(s.Say),
            DemoStep.Word s => SayNamed(s.Say),
            _ => Say("next resident"),
        };
    }

    // Yes where the read-back is what she meant; else the right number in one breath, where she has words for it.
    private AideMove.Speak Confirm(string prompt, VitalSign? sign)
    {
        if (MeantOf(sign) is not { } meant || meant.Value.Sign != sign || AideMind.AddsToReadBackOf(prompt, meant))
        {
            return Say("cancel");
        }

        if (AideMind.IsReadBackOf(prompt, meant))
        {
            return Say("yes");
        }

        string number = Step is DemoStep.Measure s ? AideMind.NumberWords(s.Meant ?? clips.Named(s.Say).Text) : "";
        return Corrections.Select(words => clips.Saying($"{words} {number}", Voice, 0)).OfType<DemoClip>().FirstOrDefault() is { } corrected
            && !saidInStep.ContainsKey(corrected.Text)
            ? Say(corrected)
            : Say("no");
    }

    private AideMove.Speak SayDigits(string prompt, VitalSign? sign) =>
        MeantOf(sign) is { } meant && meant.Value.Sign == sign && !AideMind.AddsToReadBackOf(prompt, meant) && clips.Saying(AideMind.Digits(meant), Voice, 0) is not null
            ? Say(AideMind.Digits(meant))
            : Say("cancel");

    // Where nothing was answered, the question is asked again.
    private AideMove.Speak AskNext(string prompt)
    {
        questions = questions > 0 && prompt.Length == 0 ? questions - 1 : questions;
        return questions < manifest.Handover.Count ? SayNamed(manifest.Handover[questions++]) : Say("goodbye");
    }

    private AideMove SayCount(DemoStep.Count counting, VitalSign? sign) => (sign, counting.Breaths) switch
    {
        (VitalSign.Respirations, { } breaths) => SayNamed(breaths),
        (VitalSign.Respirations, null) => Say("cancel"),
        // Not understood: the program's example is in digits.
        _ when saidInStep.ContainsKey(clips.Named(counting.Counted).Text) && Meant is { } meant && clips.Saying(AideMind.Digits(meant), Voice, 0) is not null =>
            Say(AideMind.Digits(meant)),
        _ => SayNamed(counting.Counted),
    };

    private AideMove.Speak SayNamed(string id)
    {
        DemoClip clip = clips.Named(id);
        return saidInStep.ContainsKey(clip.Text) ? Say(clip.Text) : Say(clip);
    }

    private AideMove.Speak Say(string text) =>
        clips.Saying(text, Voice, saidInStep.GetValueOrDefault(text)) is { } clip
            ? Say(clip)
            : throw new InvalidDataException($"manifest.json: no clip says \"{text}\"; add one");

    private AideMove.Speak Say(DemoClip clip)
    {
        moves++;
        saidInStep[clip.Text] = saidInStep.GetValueOrDefault(clip.Text) + 1;
        return new AideMove.Speak(clip);
    }

    private static string Plain(string text) => text.ToLowerInvariant().Replace(",", "", StringComparison.Ordinal);
}
