using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Rules;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>A conversation of seeded chance: mostly what helps it on, and everything else in between.</summary>
internal sealed class AnyConversation
{
    private readonly Random chance;
    private readonly DialogueMachine machine;
    private readonly Queue<DialogueEvent> answers = new();
    private DateTimeOffset now = TestHome.Morning;

    private AnyConversation(int seed, IRulebook rules)
    {
        chance = new Random(seed);
        Parts = new Parts(rules, TestHome.Roster, new DialogueSettings());
        machine = new DialogueMachine(rules, Parts.Roster, Parts.Settings);
    }

    /// <summary>What the machine looks things up in.</summary>
    public Parts Parts { get; }

    public Dictionary<DateTimeOffset, string> SaidAt { get; } = [];

    public Dictionary<DateTimeOffset, DialogueEvent.Utterance> Heard { get; } = [];

    /// <summary>The stage that each event met.</summary>
    public Dictionary<DateTimeOffset, Stage> Met { get; } = [];

    public HashSet<string> Identified { get; } = [];

    public static void Run(int seed, IRulebook rules, Action<AnyConversation, DialogueEvent, DialogueState, DialogueStep> check)
    {
        var talk = new AnyConversation(seed, rules);
        DialogueState state = talk.Note(talk.machine.Begin("aide-1", "s1", [], talk.now), new DialogueEvent.NothingHeard(talk.now)).State;
        for (int i = 0; i < 150; i++)
        {
            DialogueEvent happened = talk.Next(state);
            talk.Met[happened.At] = state.Stage;
            DialogueStep step = talk.Note(talk.machine.Step(state, happened), happened);
            check(talk, happened, state, step);
            state = step.State;
        }
    }

    private DialogueStep Note(DialogueStep step, DialogueEvent happened)
    {
        if (happened is DialogueEvent.Utterance said)
        {
            Heard[said.At] = said;
        }

        SaidAt[happened.At] = string.Join(' ', step.Effects.OfType<Effect.Say>().Select(s => s.Text));
        foreach (Effect.Record record in step.Effects.OfType<Effect.Record>())
        {
            Identified.UnionWith(record.Events.OfType<ResidentIdentified>().Select(e => e.Resident));
            answers.Enqueue(chance.Next(12) == 0
                ? new DialogueEvent.SaveFailed(now, record.Batch, "chance")
                : new DialogueEvent.Saved(now, record.Batch, 1));
        }

        return step;
    }

    private DialogueEvent Next(DialogueState state)
    {
        now += TimeSpan.FromSeconds(chance.Next(1, 90));
        if (answers.Count > 0 && (state.Kind == StateKind.Saving || chance.Next(2) == 0))
        {
            DialogueEvent answer = answers.Dequeue();
            return answer is DialogueEvent.Saved saved ? saved with { At = now } : ((DialogueEvent.SaveFailed)answer) with { At = now };
        }

        if (state.Kind == StateKind.Locked && chance.Next(3) > 0)
        {
            return Pick<DialogueEvent>(
                new DialogueEvent.Unlocked(now, UnlockedBy.Pin), new DialogueEvent.UnlockRefused(now, TimeSpan.FromSeconds(Pick(0, 30, 600))));
        }

        return chance.Next(16) switch
        {
            0 => Pick<DialogueEvent>(
                new DialogueEvent.NothingHeard(now), new DialogueEvent.NotAReading(now), new DialogueEvent.PartOfAReading(now),
                new DialogueEvent.TimerElapsed(now, "count"), new DialogueEvent.TimerElapsed(now, "recheck pulse"), new DialogueEvent.Played(now),
                new DialogueEvent.LockDue(now)),
            1 => Say(Anything()),
            _ => Say(Fitting(state)),
        };
    }

    private DialogueEvent.Utterance Say(Meaning meaning) => new(now, meaning, Pick("six zero", "seventy", "one eighteen", "forty"))
    {
        Margin = Pick<double?>(null, null, null, null, 0.2, 1.5, 6),
        RunnerUp = chance.Next(2) == 0 ? null : Value(),
        LevelDecibels = Pick<double?>(null, -20, -20, -50),
        Typed = chance.Next(10) == 0,
    };

    // What the state waits for, more often than not.
    private Meaning Fitting(DialogueState state) => state.Kind switch
    {
        StateKind.AwaitingRoom => new Meaning.Place(Pick(12, 12, 4, 7, 99), Pick<string?>("b", "b", null)),
        StateKind.AwaitingName => new Meaning.Answer(chance.Next(6) > 0),
        StateKind.AwaitingSecondIdentifier => Pick<Meaning>(
            new Meaning.BirthDate(3, 3, null), new Meaning.BirthDate(1, 9, 1944), new Meaning.BirthDate(2, 29, null), new Meaning.BandNumber("4711")),
        StateKind.Ready or StateKind.AwaitingRecheck => Pick(Value(), Value(), Value(), Number(), new Meaning.Command(CommandWord.Undo), Anything()),
        StateKind.AwaitingConfirmation => Pick(
            new Meaning.Answer(true), new Meaning.Answer(true), new Meaning.Answer(false), new Meaning.Correction(Spoken()), Anything()),
        StateKind.AwaitingSayingAgain or StateKind.AwaitingValue => Pick(Number(), Number(), Number(), Anything()),
        StateKind.Counting or StateKind.AwaitingCount => Pick(new Meaning.CountSaid(chance.Next(10, 60)), Anything()),
        _ => Pick(new Meaning.Answer(true), new Meaning.Answer(false), Anything()),
    };

    private Meaning Value() => new Meaning.ReadingSaid(new Reading(
        Pick<Quantity>(
            HeartRate.FromPerMinute(Pick(16, 38, 44, 60, 70, 118, 130)),
            RespiratoryRate.FromPerMinute(Pick(2, 13, 16, 30, 40)),
            BodyTemperature.FromFahrenheit(Pick(98.6m, 101.2m, 45m)),
            BloodPressure.FromMillimetresOfMercury(Pick(118, 180, 190), Pick(70, 200)),
            OxygenSaturation.FromPercent(Pick(82, 97))),
        chance.Next(2) == 0 ? new Circumstances { Uneven = true } : Circumstances.Unsaid));

    private Meaning.ValueAlone Number() => new(Spoken());

    private SpokenNumber Spoken() => Pick(new SpokenNumber(Pick(38, 44, 60, 70, 16, 30, 97, 101.2m)), new SpokenNumber(118, 70), new SpokenNumber(190, 70));

    private Meaning Anything() => Pick<Meaning>(
        Value(), Number(), new Meaning.Answer(true), new Meaning.Answer(false), new Meaning.Correction(Spoken()), new Meaning.CountSaid(44),
        new Meaning.AboutRound(Pick(Enum.GetValues<RoundWord>())),
        new Meaning.Qualifier(new Circumstances { Site = TemperatureSite.Ear }), new Meaning.Qualifier(new Circumstances { Arm = Arm.Left }),
        new Meaning.Counting(Pick(CountWord.Start, CountWord.SixtySeconds, CountWord.Uneven)), new Meaning.Hedge(), new Meaning.Worried(),
        new Meaning.NotTaken(Pick(Enum.GetValues<NotTakenReason>()), Pick<VitalSign?>(null, VitalSign.Pulse)),
        new Meaning.NotPossible(Pick<VitalSign?>(null, VitalSign.Temperature), new SpokenNumber(70), "a test"),
        new Meaning.Command(chance.Next(12) == 0 ? CommandWord.Goodbye : Pick(Enum.GetValues<CommandWord>().Where(w => w != CommandWord.Goodbye).ToArray())),
        new Meaning.Place(12, "b"), new Meaning.BirthDate(3, 3, null), new Meaning.BandNumber("4711"),
        new Meaning.Query(Pick(Enum.GetValues<QueryKind>()), 12));

    private T Pick<T>(params T[] items) => items[chance.Next(items.Length)];
}
