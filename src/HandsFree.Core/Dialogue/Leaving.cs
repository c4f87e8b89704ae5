using System.Collections.Immutable;
using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Rules;

namespace HandsFree.Core.Dialogue;

/// <summary>Leaves what is in hand, a value or a resident, so that nothing is lost and nothing is recorded unconfirmed.</summary>
internal static class Leaving
{
    /// <summary>Where a resident's set goes on: at the recheck that waits, or at readings in any order.</summary>
    public static Stage Base(this ResidentSet set) => set.Waiting.Count == 0
        ? new Stage.Ready()
        : new Stage.AwaitingRecheck(set.Waiting[0].Sign, set.Waiting[0].Instruction);

    /// <summary>The vital sign that stays open where a state is left.</summary>
    public static VitalSign? OpenSign(this Stage stage) => stage switch
    {
        Stage.AwaitingConfirmation s => s.ReadBack.Reading.Value.Sign,
        Stage.AwaitingSayingAgain s => s.ReadBack.Reading.Value.Sign,
        Stage.AwaitingValue s => s.Sign,
        Stage.Counting s => s.Sign,
        Stage.AwaitingCount s => s.Sign,
        Stage.AwaitingAnswer { Question: Question.TakenJustNow, Understood: { } u } => u.Reading.Value.Sign,
        Stage.AwaitingAnswer { Unwell: { } unwell } => unwell.Before.OpenSign(),
        Stage.Paused s => s.Return.OpenSign(),
        _ => null,
    };

    /// <summary>Leaves what waits: the attempt is kept for the audit, the sign is left open; what was confirmed already is recorded.
    /// The state itself stays.</summary>
    public static Turn Abandon(this Turn turn, string why)
    {
        Stage stage = turn.State.Stage is Stage.Paused paused ? paused.Return : turn.State.Stage;
        turn = Drop(turn, stage, why);
        return stage.OpenSign() is { } sign && turn.State.Set is { } set && !set.HasReading(sign)
            ? LeaveOpen(turn, set, sign)
            : turn;
    }

    /// <summary>Leaves the counts that are still to be read back.</summary>
    public static Turn AbandonHeld(this Turn turn, string why)
    {
        Turn left = turn.Set.Held.Aggregate(turn, (t, held) => t.DropHeld(held, why));
        return left.With(left.Set with { Held = [] });
    }

    /// <summary>Leaves the resident: what waits is left, a recheck that would have decided about a report becomes one.</summary>
    public static Turn Leave(this Turn turn, string why)
    {
        turn = turn.Unsuspended();
        if (turn.State.Set is null)
        {
            return turn;
        }

        turn = turn.Abandon(why).AbandonHeld(why);
        turn = turn.Set.Waiting.Aggregate(turn, ReportUndone);
        turn = PostureTest.End(turn);
        turn = turn.Set.RestingSince is null ? turn : RestClock.End(turn);
        ResidentSet set = turn.Set with { Late = false, Symptoms = ImmutableDictionary<VitalSign, ImmutableHashSet<string>>.Empty, Upcoming = Observations.Circumstances.Unsaid };
        return turn with { State = turn.State with { Set = null, Left = turn.State.Left.SetItem(set.Resident.Id, set) } };
    }

    /// <summary>Leaves the resident; what is still open of her is told.</summary>
    /// <param name="turn">The turn.</param>
    /// <param name="why">Why, for the record.</param>
    /// <param name="open">One sentence; empty where nothing is open, and where nobody was in hand.</param>
    public static Turn LeaveNaming(this Turn turn, string why, out string open)
    {
        turn = turn.Unsuspended();
        string? resident = turn.State.Set?.Resident.Id;
        Turn left = turn.Leave(why);
        open = resident is not null ? OpenItems.Of(left, left.State.Left[resident]) : "";
        return left;
    }

    /// <summary>Keeps what waits as a discarded attempt; the sign is not left open, for it goes on.</summary>
    public static Turn DiscardPending(this Turn turn, string why) => Drop(turn, turn.State.Stage, why);

    private static Turn Drop(Turn turn, Stage stage, string why) => stage switch
    {
        Stage.AwaitingConfirmation s => turn.Discard(s.ReadBack.Understood, s.ReadBack.Text, why),
        Stage.AwaitingSayingAgain s => turn.Discard(s.ReadBack.Understood, s.ReadBack.Text, why),
        Stage.AwaitingValue { First: { } first } => turn.Discard(first, null, why),
        Stage.Counting => turn.Do(new Effect.StopTimer(TimerNames.Count)),
        Stage.AwaitingAnswer { Understood: { } understood } => turn.Discard(understood, null, why),
        // A confirmed value is never lost for want of an answer; the graver one counts.
        Stage.AwaitingAnswer { Confirmed: not null } s => Symptoming.Unanswered(turn, s).Turn,
        Stage.AwaitingAnswer { Asleep: { } asleep } => turn.RecordNotTaken(asleep, Sleeping.NotKnown).Turn,
        Stage.AwaitingAnswer { Unwell: { } unwell } => Unwelling.Unanswered(turn, unwell).Turn,
        _ => turn,
    };

    private static Turn DropHeld(this Turn turn, HeldCount held, string why)
    {
        VitalSign sign = held.Understood.Reading.Value.Sign;
        Turn dropped = turn.Discard(held.Understood, null, why);
        return dropped.Set.HasReading(sign) ? dropped : LeaveOpen(dropped, dropped.Set, sign);
    }

    private static Turn LeaveOpen(Turn turn, ResidentSet set, VitalSign sign) =>
        set.Open.Contains(sign)
            ? turn
            : turn.With(set with { Open = set.Open.Add(sign) })
                .Write(id => new LeftOpen(id, turn.State.Aide, turn.At, set.Resident.Id, sign));

    private static Turn ReportUndone(Turn turn, WaitingRecheck waiting) => waiting.Decision.Outcome switch
    {
        Outcome.ReportNow => turn.OpenReport(waiting.Sign, ReportUrgency.Now, waiting.Decision, Reporting.RecheckNotDone).Turn,
        Outcome.ReportThisShift => turn.OpenReport(waiting.Sign, ReportUrgency.ThisShift, waiting.Decision, Reporting.RecheckNotDone).Turn,
        _ => turn,
    };
}
