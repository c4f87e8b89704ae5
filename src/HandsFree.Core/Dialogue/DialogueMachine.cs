using System.Collections.Immutable;
using HandsFree.Core.Journal;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;

namespace HandsFree.Core.Dialogue;

/// <summary>The dialogue of a round: a pure function from state and event to state and effects. It knows no clock and does nothing.</summary>
/// <param name="rules">The rules in force.</param>
/// <param name="roster">The residents.</param>
/// <param name="settings">What the home and the engine decide.</param>
public sealed class DialogueMachine(IRulebook rules, Roster roster, DialogueSettings settings)
{
    private readonly Parts parts = new(rules, roster, settings);

    /// <summary>Begins a round.</summary>
    /// <param name="aide">The id of the aide.</param>
    /// <param name="session">Unique in the home; event ids begin with it.</param>
    /// <param name="journal">All events that the journal holds, oldest first.</param>
    /// <param name="at">Now.</param>
    public DialogueStep Begin(string aide, string session, IEnumerable<JournalEvent> journal, DateTimeOffset at)
    {
        var state = new DialogueState(aide, session) { Journal = [.. journal] };
        var turn = new Turn(parts, state, new DialogueEvent.NothingHeard(at));
        return Finish(turn.Write(id => new RoundStarted(id, aide, at, rules.Hash)).Ask(Sentence.Join(GoesOn(state.Journal), OpenItems.Before(turn), OpenRechecks.Named(turn)), new Stage.AwaitingRoom()), null);
    }

    /// <summary>What one event leads to. An event that is ignored has no effects and leaves the state as it is.</summary>
    public DialogueStep Step(DialogueState state, DialogueEvent happened)
    {
        (state, happened) = Doubt.Weigh(parts, state, happened);
        Row row = TransitionTable.Find(state.Kind, Triggers.Of(happened));
        return Finish(PostureTest.AtRest(CovertCount.AtRest(row.Handle(new Turn(parts, state, happened)))), state);
    }

    private static string GoesOn(ImmutableList<JournalEvent> journal) =>
        Restoring.Unfinished(journal).Any(e => e is ResidentIdentified) ? "The round goes on." : "";

    private static DialogueStep Finish(Turn turn, DialogueState? before)
    {
        turn = WriteRest(turn);
        if (turn.Effects.IsEmpty && ReferenceEquals(turn.State, before))
        {
            return new DialogueStep(turn.State, []);
        }

        DialogueState state = turn.State with
        {
            Notice = turn.State.Notice == before?.Notice ? "" : turn.State.Notice,
            // Batches are named by the next number: no two turns share one.
            NextNumber = turn.State.NextNumber + 1,
            Writing = turn.State.Writing.AddRange(turn.Effects.OfType<Effect.Record>()
                .Select(r => KeyValuePair.Create(r.Batch, r.Events.ToImmutableList()))),
        };
        ImmutableList<Effect> effects = state.Screen == before?.Screen ? turn.Effects : turn.Effects.Add(new Effect.Show(state.Screen));
        return new DialogueStep(state, effects.Add(new Effect.Listen(state.Listening)));
    }

    // Events that no state waits for are written with the turn, before anything is said.
    private static Turn WriteRest(Turn turn)
    {
        if (turn.ToWrite.IsEmpty)
        {
            return turn;
        }

        var record = new Effect.Record(turn.Batch, turn.State.Unwritten.AddRange(turn.ToWrite));
        int first = turn.Effects.TakeWhile(e => e is Effect.Silence).Count();
        return turn with
        {
            Effects = turn.Effects.Insert(first, record),
            ToWrite = [],
            State = turn.State with { Unwritten = [] },
        };
    }
}
