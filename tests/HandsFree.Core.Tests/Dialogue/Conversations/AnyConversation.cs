using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Rules;

namespace HandsFree.Core.Tests.Dialogue.Conversations;

/// <summary>A conversation of seeded chance: mostly what helps it on, and everything else in between, heard by an engine that errs, written by
/// a disk that fails at times, by a clock that jumps.</summary>
internal sealed class AnyConversation
{
    private static readonly Meaning.Query TheNurse = new(QueryKind.Told, null) { Whom = Told.Nurse };

    private readonly Random chance;
    private readonly AnySaying sayings;
    private readonly ErringEngine engine;
    private readonly DialogueMachine machine;
    private readonly Queue<DialogueEvent> answers = new();
    private readonly HashSet<DateTimeOffset> moments = [];
    private readonly List<JournalEvent> journal = [];
    private readonly int steps;
    private DateTimeOffset now = TestHome.Morning;

    public AnyConversation(Conversation conversation, IRulebook rules)
    {
        chance = new Random(conversation.Seed);
        sayings = new AnySaying(chance);
        engine = new ErringEngine(chance, sayings);
        steps = conversation.Steps;
        Parts = new Parts(rules, TestHome.Roster, new DialogueSettings { UnlocksBySpokenDigits = chance.Next(2) == 0, DigitByDigit = chance.Next(8) == 0, BreathsInThirtySeconds = chance.Next(2) == 0 });
        machine = new DialogueMachine(rules, Parts.Roster, Parts.Settings);
    }

    /// <summary>What the machine looks things up in.</summary>
    public Parts Parts { get; }

    /// <summary>The aide says no to what she did not say and yes to what she did, and is not heard saying the other.</summary>
    public bool Attentive { get; init; }

    /// <summary>The value that the attentive aide wants to be saved.</summary>
    public Quantity? Wanted { get; private set; }

    /// <summary>What the journal holds, in its order.</summary>
    public IReadOnlyList<JournalEvent> Journal => journal;

    /// <summary>How many events there were so far; no two have the same time, but their times may jump.</summary>
    public int Count { get; private set; }

    /// <summary>The number of the event at a moment.</summary>
    public Dictionary<DateTimeOffset, int> Number { get; } = [];

    public Dictionary<DateTimeOffset, string> SaidAt { get; } = [];

    public Dictionary<DateTimeOffset, DialogueEvent.Utterance> Heard { get; } = [];

    /// <summary>The state that each event met.</summary>
    public Dictionary<DateTimeOffset, DialogueState> Met { get; } = [];

    public HashSet<string> Identified { get; } = [];

    /// <summary>Runs a conversation and checks each step of it.</summary>
    public static AnyConversation Run(
        Conversation conversation, IRulebook rules, Action<AnyConversation, DialogueEvent, DialogueState, DialogueStep> check, bool attentive = false)
    {
        var talk = new AnyConversation(conversation, rules) { Attentive = attentive };
        DialogueState state = talk.Begin().State;
        for (int i = 0; i < talk.steps; i++)
        {
            DialogueEvent happened = talk.Next(state);
            DialogueStep step = talk.Step(state, happened);
            check(talk, happened, state, step);
            state = step.State;
        }

        return talk;
    }

    public DialogueStep Begin() => Note(machine.Begin("aide-1", "s1", [], Moment()), new DialogueEvent.NothingHeard(now));

    /// <summary>What one event leads to, noted.</summary>
    public DialogueStep Step(DialogueState state, DialogueEvent happened)
    {
        Met[happened.At] = state;
        return Note(machine.Step(state, happened), happened);
    }

    /// <summary>What one event would lead to; nothing is noted.</summary>
    public DialogueStep Try(DialogueState state, DialogueEvent happened) => machine.Step(state, happened);

    /// <summary>What happens next.</summary>
    public DialogueEvent Next(DialogueState state)
    {
        Moment();
        if (answers.Count > 0 && (state.Kind == StateKind.Saving || chance.Next(2) == 0))
        {
            return Answered(answers.Dequeue());
        }

        if (state.Kind == StateKind.Locked && chance.Next(3) > 0)
        {
            return sayings.Pick<DialogueEvent>(
                new DialogueEvent.Unlocked(now, sayings.Any<UnlockedBy>()), new DialogueEvent.UnlockRefused(now, TimeSpan.FromSeconds(chance.Next(0, 700))));
        }

        if (state.Stage is Stage.Counting && chance.Next(3) == 0)
        {
            return chance.Next(2) == 0 ? new DialogueEvent.Played(now) : new DialogueEvent.TimerElapsed(now, TimerNames.Count);
        }

        return chance.Next(16) switch
        {
            0 => Nobody(),
            1 when !Attentive => engine.Hear(now, sayings.Anything()),
            _ => engine.Hear(now, Attentive ? Meant(state) : Fitting(state), yesIsHeard: Attentive),
        };
    }

    /// <summary>One event of every kind, in any state.</summary>
    public IEnumerable<DialogueEvent> Everything()
    {
        yield return new DialogueEvent.NothingHeard(now);
        yield return new DialogueEvent.NotAReading(now);
        yield return new DialogueEvent.PartOfAReading(now);
        yield return new DialogueEvent.Played(now);
        yield return new DialogueEvent.LockDue(now);
        yield return new DialogueEvent.Resumed(now, now.AddMinutes(-chance.Next(0, 20)));
        yield return new DialogueEvent.Unlocked(now, sayings.Any<UnlockedBy>());
        yield return new DialogueEvent.UnlockRefused(now, TimeSpan.FromSeconds(chance.Next(0, 700)));
        yield return new DialogueEvent.Saved(now, "s1-batch-0", 1);
        yield return new DialogueEvent.SaveFailed(now, "s1-batch-0", "chance");
        yield return Timer();
        foreach (Meaning meaning in Enumerable.Range(0, 80).Select(_ => sayings.Anything())
            .Concat(Enum.GetValues<CommandWord>().Select(word => new Meaning.Command(word)))
            .DistinctBy(m => Triggers.Of(new DialogueEvent.Utterance(now, m, ""))))
        {
            yield return new DialogueEvent.Utterance(now, meaning, "said") { Probability = 0.95, Typed = chance.Next(4) == 0, LevelDecibels = -20 };
        }
    }

    private DialogueStep Note(DialogueStep step, DialogueEvent happened)
    {
        Number[happened.At] = Count++;
        if (happened is DialogueEvent.Utterance said)
        {
            Heard[said.At] = said;
        }

        SaidAt[happened.At] = string.Join(' ', step.Effects.OfType<Effect.Say>().Select(s => s.Text));
        foreach (Effect.Record record in step.Effects.OfType<Effect.Record>())
        {
            Identified.UnionWith(record.Events.OfType<ResidentIdentified>().Select(e => e.Resident));
            if (chance.Next(12) == 0)
            {
                answers.Enqueue(new DialogueEvent.SaveFailed(now, record.Batch, "chance"));
            }
            else
            {
                journal.AddRange(record.Events);
                answers.Enqueue(new DialogueEvent.Saved(now, record.Batch, journal.Count));
            }
        }

        return step;
    }

    private DateTimeOffset Moment()
    {
        now += chance.Next(80) switch
        {
            0 => TimeSpan.FromSeconds(chance.Next(-3 * 3600, 3 * 3600)),
            1 when chance.Next(8) == 0 => TimeSpan.FromDays(chance.Next(-400, 400)),
            _ => TimeSpan.FromSeconds(chance.Next(1, 90)),
        };
        while (!moments.Add(now))
        {
            now += TimeSpan.FromMilliseconds(1);
        }

        return now;
    }

    private DialogueEvent Answered(DialogueEvent answer) =>
        answer is DialogueEvent.Saved saved ? saved with { At = now } : ((DialogueEvent.SaveFailed)answer) with { At = now };

    private DialogueEvent Nobody() => chance.Next(4) switch
    {
        0 => Timer(),
        1 => new DialogueEvent.Played(now),
        2 => new DialogueEvent.NothingHeard(now),
        _ => chance.Next(12) switch
        {
            < 4 => new DialogueEvent.LockDue(now),
            4 => new DialogueEvent.Resumed(now, now.AddMinutes(-chance.Next(0, 20))),
            _ => new DialogueEvent.NotAReading(now),
        },
    };

    private DialogueEvent.TimerElapsed Timer() => new(now, sayings.Pick(
        TimerNames.Count, TimerNames.Rest, TimerNames.StandingOne, TimerNames.StandingThree, TimerNames.Recheck(sayings.Sign())));

    // What the state waits for, more often than not.
    private Meaning Fitting(DialogueState state) => state.Stage switch
    {
        Stage.AwaitingRoom => chance.Next(12) == 0 ? sayings.Query() : sayings.Place(),
        Stage.AwaitingName => new Meaning.Answer(chance.Next(6) > 0),
        Stage.AwaitingSecondIdentifier s => chance.Next(3) > 0
            ? new Meaning.BirthDate(s.Resident.Born.Month, s.Resident.Born.Day, sayings.Pick<int?>(null, null, s.Resident.Born.Year))
            : sayings.Pick<Meaning>(sayings.Birthday(), sayings.Band()),
        Stage.Ready or Stage.AwaitingRecheck => chance.Next(6) switch
        {
            0 => new Meaning.ValueAlone(sayings.Number((state.Stage as Stage.AwaitingRecheck)?.Sign ?? sayings.Sign())),
            1 => new Meaning.Command(CommandWord.Undo),
            2 => sayings.Anything(),
            _ => sayings.Reading(),
        },
        Stage.AwaitingConfirmation s => sayings.Pick<Meaning>(
            new Meaning.Answer(true), new Meaning.Answer(true), new Meaning.Answer(false),
            new Meaning.Correction(sayings.Number(s.ReadBack.Reading.Value.Sign)), sayings.Anything()),
        Stage.AwaitingSayingAgain s => chance.Next(3) > 0 ? Alone(s.ReadBack.Reading.Value) : sayings.Pick<Meaning>(
            new Meaning.ValueAlone(sayings.Number(s.ReadBack.Reading.Value.Sign)), sayings.Anything()),
        Stage.AwaitingValue s => sayings.Pick<Meaning>(
            new Meaning.ValueAlone(sayings.Number(s.Sign)), s.First is { } first ? Alone(first.Reading.Value) : new Meaning.Answer(true), sayings.Anything()),
        Stage.Counting or Stage.AwaitingCount => sayings.Pick<Meaning>(new Meaning.CountSaid(chance.Next(10, 60)), sayings.Anything()),
        Stage.Handover => sayings.Pick<Meaning>(TheNurse, TheNurse, sayings.Query(), sayings.Place(), sayings.Anything()),
        Stage.Paused => sayings.Pick<Meaning>(new Meaning.Command(CommandWord.Continue), sayings.Anything()),
        _ => sayings.Pick<Meaning>(new Meaning.Answer(true), new Meaning.Answer(false), sayings.Anything()),
    };

    // What an aide says who listens to what is read back.
    private Meaning Meant(DialogueState state)
    {
        switch (state.Stage)
        {
            case Stage.Ready or Stage.AwaitingRecheck:
                Meaning.ReadingSaid reading = sayings.Reading();
                Wanted = reading.Reading.Value;
                return chance.Next(12) == 0 ? sayings.Pick<Meaning>(new Meaning.Command(CommandWord.Undo), new Meaning.Qualifier(sayings.How()), sayings.Place()) : reading;
            case Stage.AwaitingConfirmation s:
                return s.ReadBack.Reading.Value == Wanted
                    ? new Meaning.Answer(true)
                    : Wanted is null || chance.Next(2) == 0 || Wanted.Sign != s.ReadBack.Reading.Value.Sign ? new Meaning.Answer(false) : new Meaning.Correction(Alone(Wanted).Number);
            case Stage.AwaitingSayingAgain s:
                return s.ReadBack.Reading.Value == Wanted ? Alone(Wanted) : new Meaning.Answer(false);
            case Stage.AwaitingValue s:
                return Wanted?.Sign == s.Sign ? Alone(Wanted) : new Meaning.Command(CommandWord.Cancel);
            case Stage.Counting or Stage.AwaitingCount:
                return new Meaning.Command(CommandWord.Cancel);
            default:
                return Fitting(state);
        }
    }

    private static Meaning.ValueAlone Alone(Quantity value) => new(ErringEngine.Spoken(value));
}
