using System.Collections.Immutable;
using System.Globalization;
using HandsFree.Core.Journal;
using HandsFree.Core.Observations;

namespace HandsFree.Core.Dialogue;

/// <summary>One event on its way through the dialogue: the state it met, and what has been gathered so far. Immutable.</summary>
internal sealed record Turn(Parts Parts, DialogueState State, DialogueEvent Event)
{
    public ImmutableList<Effect> Effects { get; init; } = [];

    /// <summary>Events to write; all of one turn go into one batch.</summary>
    public ImmutableList<JournalEvent> ToWrite { get; init; } = [];

    public DateTimeOffset At => Event.At;

    public DialogueEvent.Utterance Said => (DialogueEvent.Utterance)Event;

    public ResidentSet Set => State.Set ?? throw new InvalidOperationException($"nobody is identified in {State.Kind}");

    /// <summary>The name of this turn's batch; it takes the number after the turn's ids.</summary>
    public string Batch => $"{State.Session}-batch-{State.NextNumber.ToString(CultureInfo.InvariantCulture)}";

    public Heard Heard => new(Said.Words, Said.Probability, Said.Margin, Said.RunnerUpWords, Said.LevelDecibels, Said.Typed, At);

    public T Stage<T>()
        where T : Stage => (T)State.Stage;

    public T Meant<T>()
        where T : Meanings.Meaning => (T)Said.Meaning;

    public Turn Do(Effect effect) => this with { Effects = Effects.Add(effect) };

    public Turn Go(Stage stage) => this with { State = State with { Stage = stage } };

    public Turn With(ResidentSet set) => this with { State = State with { Set = set } };

    /// <summary>From now on read-backs name the room, until a value is saved.</summary>
    public Turn NamingRoom() => this with { State = State with { NamesRoom = true } };

    /// <summary>Says a text; where it is what was said last, with "Again" before it.</summary>
    public Turn Say(string text)
    {
        if (text.Length == 0)
        {
            return this;
        }

        string said = text == State.LastSaid ? "Again: " + text : text;
        return Do(new Effect.Say(said)) with { State = State with { LastSaid = said } };
    }

    /// <summary>Goes to a state and says its prompt.</summary>
    public Turn Ask(Stage stage) => Go(stage).Say(Prompts.For(stage, Parts, State with { Stage = stage }));

    /// <summary>Goes to a state and says something, then its prompt, as one text.</summary>
    public Turn Ask(string before, Stage stage) =>
        Go(stage).Say(Sentence.Join(before, Prompts.For(stage, Parts, State with { Stage = stage })));

    /// <summary>All events that are in the journal or on their way there, oldest first.</summary>
    public IEnumerable<JournalEvent> Known() =>
        State.Journal.Concat(State.Writing.Values.SelectMany(batch => batch)).Concat(State.Unwritten).Concat(ToWrite);

    /// <summary>Adds an event to this turn's batch.</summary>
    /// <param name="make">Makes it of its id.</param>
    public Turn Write(Func<string, JournalEvent> make)
    {
        string id = $"{State.Session}-{State.NextNumber.ToString(CultureInfo.InvariantCulture)}";
        return this with { ToWrite = ToWrite.Add(make(id)), State = State with { NextNumber = State.NextNumber + 1 } };
    }

    /// <summary>Waits for the journal to flush this turn's batch, then says a text and goes on.</summary>
    /// <param name="text">What is said once it is saved.</param>
    /// <param name="after">Where it goes on.</param>
    /// <param name="beforeUndo">For an undo, the set as it was.</param>
    public Turn Save(string text, Stage after, ResidentSet? beforeUndo = null)
    {
        ImmutableList<JournalEvent> events = State.Unwritten.AddRange(ToWrite);
        Turn saving = Go(new Stage.Saving(Batch, events, text, after) { BeforeUndo = beforeUndo }).Do(new Effect.Record(Batch, events));
        return saving with { ToWrite = [], State = saving.State with { Unwritten = [], NamesRoom = false } };
    }
}
