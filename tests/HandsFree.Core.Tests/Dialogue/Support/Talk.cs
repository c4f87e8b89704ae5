using System.Globalization;
using System.Text;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Hearings;
using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using Shouldly;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>Runs a written conversation. Each line is a sentence that the aide says, or in brackets what else happens:
/// (nothing), (mumble), (part), (timer NAME), (after 6 min), (margin 0.3 SENTENCE | OTHER), (typed SENTENCE), (quiet SENTENCE),
/// (saving fails), (saving works), (lock), (unlocked), (wrong 30: seconds to wait). The journal answers at once.</summary>
internal sealed class Talk
{
    private readonly DialogueMachine machine;
    private readonly StringBuilder transcript = new();
    private readonly List<JournalEvent> journal = [];
    private DateTimeOffset now = TestHome.Morning;
    private bool saves = true;
    private long sequence;

    public Talk(DialogueSettings? settings = null, IRulebook? rules = null, Roster? roster = null, IReadOnlyList<JournalEvent>? past = null)
    {
        journal.AddRange(past ?? []);
        machine = new DialogueMachine(rules ?? new TestRules(), roster ?? TestHome.Roster, settings ?? new DialogueSettings());
        Take(machine.Begin("aide-1", "s1", past ?? [], now));
    }

    private Talk(Talk interrupted, string aide, int minutes)
    {
        machine = interrupted.machine;
        journal.AddRange(interrupted.journal);
        sequence = interrupted.sequence;
        now = interrupted.now.AddMinutes(minutes);
        Take(machine.Begin(aide, "s2", interrupted.journal, now));
    }

    public DialogueState State { get; private set; } = null!;

    public string Said { get; private set; } = "";

    public string Transcript => transcript.ToString();

    public IReadOnlyList<JournalEvent> Journal => journal;

    public IReadOnlyList<Effect> LastEffects { get; private set; } = [];

    /// <summary>A talk with Mary Miller in room 12 bed B identified.</summary>
    public static Talk WithMary(DialogueSettings? settings = null, IRulebook? rules = null) =>
        new Talk(settings, rules).Go("room twelve bed b", "yes", "march third");

    /// <summary>The program was stopped; somebody starts it again, with nothing but the journal.</summary>
    public Talk Interrupted(string aide = "aide-1", int minutes = 2) => new(this, aide, minutes);

    public Talk Go(params string[] lines)
    {
        foreach (string line in lines)
        {
            Line(line);
        }

        return this;
    }

    public void Happens(DialogueEvent happened) => Take(machine.Step(State, happened));

    private void Line(string line)
    {
        transcript.Append("aide: ").Append(line).Append('\n');
        now += TimeSpan.FromSeconds(4);
        string[] parts = line.Trim('(', ')').Split(' ', 2);
        if (!line.StartsWith('('))
        {
            Hear(line, null, null, -20);
            return;
        }

        switch (parts[0])
        {
            case "nothing":
                Happens(new DialogueEvent.NothingHeard(now));
                break;
            case "unknown":
                Happens(new DialogueEvent.NotAReading(now) { Typed = true });
                break;
            case "mumble":
                Happens(new DialogueEvent.NotAReading(now));
                break;
            case "part":
                Happens(new DialogueEvent.PartOfAReading(now));
                break;
            case "played":
                Happens(new DialogueEvent.Played(now));
                break;
            case "timer":
                Happens(new DialogueEvent.TimerElapsed(now, parts[1]));
                break;
            case "lock":
                Happens(new DialogueEvent.LockDue(now));
                break;
            case "unlocked":
                Happens(new DialogueEvent.Unlocked(now, UnlockedBy.Pin));
                break;
            case "wrong":
                Happens(new DialogueEvent.UnlockRefused(now, TimeSpan.FromSeconds(int.Parse(parts[1], CultureInfo.InvariantCulture))));
                break;
            case "after":
                now += TimeSpan.FromMinutes(int.Parse(parts[1].Split(' ')[0], CultureInfo.InvariantCulture));
                break;
            case "saving":
                saves = parts[1] == "works";
                break;
            case "typed":
                Happens(new DialogueEvent.Utterance(now, Understand(parts[1]).ShouldNotBeNull(), parts[1]) { Typed = true });
                break;
            case "quiet":
                Hear(parts[1], null, null, -45);
                break;
            case "margin":
                string[] rest = parts[1].Split(' ', 2);
                string[] two = rest[1].Split(" | ");
                Hear(two[0], double.Parse(rest[0], CultureInfo.InvariantCulture), two[1], -20);
                break;
            case "doubtful":
                Doubt(parts[1]);
                break;
            default:
                throw new ArgumentException($"unknown line {line}");
        }
    }

    private Meaning? Understand(string sentence) => Ears.Understand(State.Listening, sentence);

    // "0.5 yes | 0.4 no": what the engine could not tell apart.
    private void Doubt(string line)
    {
        (double Probability, string Words, Meaning Meaning)[] all = [.. line.Split(" | ").Select(part => part.Split(' ', 2))
            .Select(p => (double.Parse(p[0], CultureInfo.InvariantCulture), p[1], Understand(p[1]).ShouldNotBeNull(p[1])))];
        Happens(new DialogueEvent.Utterance(now, all[0].Meaning, all[0].Words)
        {
            Probability = all[0].Probability,
            Margin = all.Length > 1 ? Math.Log(all[0].Probability / all[1].Probability) : null,
            Alternatives = [.. all.Select(a => new Possible<Meaning>(a.Meaning, a.Probability))],
            Doubtful = true,
            LevelDecibels = -20,
        });
    }

    private void Hear(string sentence, double? margin, string? other, double level)
    {
        Meaning? meaning = Understand(sentence);
        Happens(meaning is null
            ? new DialogueEvent.NotAReading(now)
            : new DialogueEvent.Utterance(now, meaning, sentence)
            {
                Probability = 0.9,
                Margin = margin,
                RunnerUp = other is null ? null : Understand(other),
                RunnerUpWords = other,
                LevelDecibels = level,
            });
    }

    private void Take(DialogueStep step)
    {
        State = step.State;
        LastEffects = step.Effects;
        foreach (Effect effect in step.Effects)
        {
            Note(effect);
        }

        foreach (Effect.Record record in step.Effects.OfType<Effect.Record>())
        {
            if (saves)
            {
                journal.AddRange(record.Events);
                sequence += record.Events.Count;
                Happens(new DialogueEvent.Saved(now, record.Batch, sequence));
            }
            else
            {
                Happens(new DialogueEvent.SaveFailed(now, record.Batch, "the disk is full"));
            }
        }
    }

    private void Note(Effect effect)
    {
        string? line = effect switch
        {
            Effect.Say say => "tool: " + (Said = say.Text),
            // What the tone stands for counts as said.
            Effect.Play { Tone: Tone.Saved or Tone.Ready } play => $"      [tone {Said = $"{play.Tone}."}]",
            Effect.Play play => $"      [tone {play.Tone}]",
            Effect.Record record => $"      [journal: {string.Join(", ", record.Events.Select(Short))}]",
            Effect.StartTimer timer => $"      [timer {timer.Name}, {timer.After.TotalSeconds} s]",
            Effect.Silence => "      [silence]",
            Effect.End => "      [end]",
            _ => null,
        };
        if (line is not null)
        {
            transcript.Append(line).Append('\n');
        }
    }

    private static string Short(JournalEvent entry) => entry switch
    {
        ReadingRecorded e => $"reading \"{e.Confirmed.ReadBack.Text}\" by {e.Confirmed.How}",
        AttemptDiscarded e => $"attempt \"{e.ReadBack ?? e.Heard.Words}\" discarded, {e.Why}",
        NotTakenRecorded e => $"not taken \"{e.ReadBack}\"",
        ReportOpened e => $"report {e.Urgency} on {e.Readings.Count} readings",
        LeftOpen e => $"left open {e.Sign}",
        _ => entry.GetType().Name,
    };
}
