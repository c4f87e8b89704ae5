using System.Collections.Immutable;
using HandsFree.Core.Dialogue.Recovery;
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
    private readonly Lazy<string> fingerprint = new(() => Fingerprint.Of(new Parts(rules, roster, settings)));

    /// <summary>Begins a round.</summary>
    /// <param name="aide">The id of the aide.</param>
    /// <param name="session">Unique in the home; event ids begin with it.</param>
    /// <param name="journal">All events that the journal holds, oldest first.</param>
    /// <param name="at">Now.</param>
    /// <param name="wasCut">A round of hers was cut off and can't go on where it was: she is told what that means.</param>
    public DialogueStep Begin(string aide, string session, IEnumerable<JournalEvent> journal, DateTimeOffset at, bool wasCut = false)
    {
        var state = new DialogueState(aide, session) { Journal = [.. journal] };
        var turn = new Turn(parts, state, new DialogueEvent.NothingHeard(at));
        return Finish(turn.Write(id => new RoundStarted(id, aide, at, rules.Hash) { Fingerprint = fingerprint.Value })
            .Ask(Sentence.Join(GoesOn(state.Journal), wasCut ? Lost : "", OpenItems.Before(turn), OpenRechecks.Named(turn)), new Stage.AwaitingRoom()), null);
    }

    /// <summary>A round that was cut off, as it was: what its dialogue was told is told again, and nothing is done. Then
    /// <see cref="DialogueEvent.Resumed"/> is to follow, after the answers of the journal that are missing.</summary>
    /// <returns>The round; null where program, rules, residents or settings are others than they were: then a new one begins, with what was
    /// saved.</returns>
    public ResumedRound? Resume(CutRound cut)
    {
        ArgumentNullException.ThrowIfNull(cut);
        return cut.Started.Fingerprint == fingerprint.Value ? TellingAgain.Run(this, cut) : null;
    }

    /// <summary>What one event leads to. An event that is ignored has no effects and leaves the state as it is.</summary>
    public DialogueStep Step(DialogueState state, DialogueEvent happened)
    {
        (state, happened) = Doubt.Weigh(parts, state, happened);
        Row row = TransitionTable.Find(state.Kind, Triggers.Of(happened));
        return Finish(PostureTest.AtRest(CovertCount.AtRest(row.Handle(new Turn(parts, state, happened)))), state);
    }

    private const string Lost = "What was not saved is gone: say it again.";

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
