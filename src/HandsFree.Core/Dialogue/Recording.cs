using System.Collections.Immutable;
using HandsFree.Core.Journal;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Rules;

namespace HandsFree.Core.Dialogue;

/// <summary>Turns a confirmed reading into events: the reading, and the recheck or the report that the rules ask for.</summary>
internal static class Recording
{
    private const int MostRechecks = 2;

    /// <summary>Records, or asks first for a symptom that would change the decision; it is asked for once at a bed.</summary>
    public static Turn RecordOrAsk(this Turn turn, Confirmed confirmed, string? amends) =>
        turn.Set.Symptoms.TryGetValue(confirmed.Reading.Value.Sign, out ImmutableHashSet<string>? said) ? turn.Record(confirmed, amends, said, []).Save()
        : Symptoming.QuestionOn(turn, confirmed, amends) is { } question ? turn.Ask(question)
        : turn.Record(confirmed, amends, [], []).Save();

    /// <summary>Who and when, for a value that is confirmed now.</summary>
    /// <remarks>More said about a reading does not change when it was measured.</remarks>
    public static Attribution Attribute(this Turn turn, Understood understood, string? amends)
    {
        ReadingRecorded? amended = turn.Set.Saved.FirstOrDefault(s => s.Events[0] == amends)?.Reading;
        return (amended, turn.Set) switch
        {
            ({ } reading, _) => reading.Confirmed.By with { EnteredAt = turn.At },
            (_, { Late: true, StoppedAt: { } stopped }) => new Attribution(turn.State.Aide, stopped, turn.At, Late: true),
            _ => new Attribution(turn.State.Aide, understood.Heard.At, turn.At),
        };
    }

    /// <summary>Records a confirmed reading and what follows from it.</summary>
    /// <param name="turn">The turn.</param>
    /// <param name="confirmed">The reading.</param>
    /// <param name="amends">The id of the reading that it replaces, or null.</param>
    /// <param name="symptoms">The symptoms that were said.</param>
    /// <param name="unknown">The symptoms that were asked for without an answer.</param>
    public static Recorded Record(this Turn turn, Confirmed confirmed, string? amends, ImmutableHashSet<string> symptoms, ImmutableHashSet<string> unknown)
    {
        VitalSign sign = confirmed.Reading.Value.Sign;
        ResidentSet before = turn.Set;
        if (amends is not null && before.Saved.FirstOrDefault(s => s.Events[0] == amends) is { } amended)
        {
            // The rules run again as if the amended reading had not been.
            turn = turn.With(before.WithDecisionsOf(amended.Before));
        }

        Decision decision = Symptoming.Decide(turn, confirmed, symptoms, unknown, amends);
        bool isRecheck = turn.Set.Waits(sign) && !confirmed.Reading.How.TooEarly;
        int firstEvent = turn.ToWrite.Count;
        turn = turn.Write(id => new ReadingRecorded(
            id, turn.State.Aide, turn.At, turn.Set.Resident.Id, confirmed, decision, isRecheck, amends));
        var reading = (ReadingRecorded)turn.ToWrite[^1];
        turn = turn.With(turn.Set.WithReading(reading));
        Recorded follows = amends is null ? turn.Follow(reading, decision).After(confirmed.Reading) : turn.Follow(reading, decision);
        ImmutableList<string> ids = [.. follows.Turn.ToWrite.Skip(firstEvent).Select(e => e.Id)];
        var item = new SavedItem(ids, sign, reading, confirmed.ReadBack.Text, before);
        ResidentSet set = follows.Turn.Set;
        return follows with { Turn = follows.Turn.With(set with { Saved = set.Saved.RemoveAll(s => s.Events[0] == amends).Add(item) }) };
    }

    private static Recorded Follow(this Turn turn, ReadingRecorded reading, Decision decision)
    {
        VitalSign sign = reading.Confirmed.Reading.Value.Sign;
        if (reading.Confirmed.Reading.How.TooEarly)
        {
            return Rechecking.TakenTooEarly(turn, reading, decision);
        }

        Recheck? recheck = turn.Set.RechecksDone(sign) < MostRechecks ? decision.Recheck : null;
        ReportUrgency? urgency = Reporting.UrgencyOf(decision.Outcome);
        Recorded report = urgency is { } when && (recheck is null || decision.Danger)
            ? turn.OpenReport(sign, when, decision, "")
            : new Recorded(turn, string.Join(' ', decision.SilencedBy.Select(PlanTexts.Silencing)));
        return recheck is null ? report : report.AskRecheck(reading, recheck, decision);
    }

    private static Recorded AskRecheck(this Recorded recorded, ReadingRecorded reading, Recheck recheck, Decision decision)
    {
        Turn turn = recorded.Turn;
        ResidentSet set = turn.Set;
        VitalSign sign = reading.Confirmed.Reading.Value.Sign;
        DateTimeOffset due = turn.At + recheck.After;
        turn = turn.Write(id => new RecheckAsked(
            id, turn.State.Aide, turn.At, set.Resident.Id, sign, reading.Id, recheck.Rule, recheck.Instruction, due));
        turn = turn.With(set with
        {
            Waiting = set.Waiting.Insert(0, new WaitingRecheck(sign, recheck.Instruction, decision, due)),
            RechecksAsked = set.RechecksAsked.SetItem(sign, set.RechecksDone(sign) + 1),
        });
        turn = recheck.After > TimeSpan.Zero ? turn.Do(new Effect.StartTimer(TimerNames.Recheck(sign), recheck.After)) : turn;
        return new Recorded(turn, Sentence.Join(recorded.Text, recheck.Instruction));
    }

    private static ResidentSet WithReading(this ResidentSet set, ReadingRecorded reading)
    {
        Reading taken = reading.Confirmed.Reading;
        VitalSign sign = taken.Value.Sign;
        ImmutableList<string> chain = set.Waits(sign) ? set.Chain(sign) : [];
        return (set with
        {
            Waiting = taken.How.TooEarly ? set.Waiting : set.Waiting.RemoveAll(w => w.Sign == sign),
            Chains = set.Chains.SetItem(sign, chain.Add(reading.Id)),
            Open = set.Open.Remove(sign),
            NotTaken = set.NotTaken.Remove(sign),
            AskAgain = set.AskAgain.Remove(sign),
            Refused = set.Refused.Remove(taken.Value),
            Upcoming = set.Upcoming.Without(sign),
            Late = false,
        }).WithoutGuess(sign);
    }

    private static ResidentSet WithDecisionsOf(this ResidentSet set, ResidentSet before) => set with
    {
        Waiting = before.Waiting,
        RechecksAsked = before.RechecksAsked,
        Chains = before.Chains,
        Reported = before.Reported,
    };
}
