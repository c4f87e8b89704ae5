using System.Collections.Immutable;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Rules;

namespace HandsFree.Core.Dialogue;

/// <summary>Symptoms that change what the rules say of a pulse or a pressure. A yes stands for one symptom: where a question names
/// several, a yes leads to a question for each. What was not answered is not written down as a symptom; it counts as grave as it could be.</summary>
internal static class Symptoming
{
    private static readonly ImmutableDictionary<VitalSign, ImmutableList<string>> Asked = new Dictionary<VitalSign, ImmutableList<string>>
    {
        [VitalSign.Pulse] = ["short of breath"],
        [VitalSign.BloodPressure] = ["chest pain", "headache", "weakness"],
    }.ToImmutableDictionary();

    /// <summary>The question whose yes would make the decision on a value that is told anyway graver; null else, and where a report as
    /// grave as a yes could make is open on the sign.</summary>
    public static Stage? QuestionOn(Turn turn, Confirmed confirmed, string? amends)
    {
        Reading reading = confirmed.Reading;
        VitalSign sign = reading.Value.Sign;
        Outcome without = turn.Decide(reading).Outcome;
        return without != Outcome.Accept
            && Asked.TryGetValue(sign, out ImmutableList<string>? symptoms)
            && turn.Decide(reading, symptoms.ToImmutableHashSet()).Outcome is var with && with > without
            && !(turn.Set.Reported.TryGetValue(sign, out var open) && open >= Reporting.UrgencyOf(with))
                ? new Stage.AwaitingAnswer(Question.Symptom, Text(symptoms)) { Confirmed = confirmed, Symptoms = symptoms, Amends = amends }
                : null;
    }

    public static Turn Answered(Turn turn, bool yes)
    {
        var stage = turn.Stage<Stage.AwaitingAnswer>();
        if (yes && stage.Symptoms.Count > 1)
        {
            return turn.Ask(Single(stage, stage.Symptoms, stage.Has));
        }

        ImmutableHashSet<string> has = yes ? stage.Has.Union(stage.Symptoms) : stage.Has;
        return stage.Next.Count > 0
            ? turn.Ask(Single(stage, stage.Next, has))
            : turn.With(turn.Set with { Symptoms = turn.Set.Symptoms.SetItem(stage.Confirmed!.Reading.Value.Sign, has) })
                .Record(stage.Confirmed, stage.Amends, has, []).Save();
    }

    /// <summary>Nobody answered: a confirmed value is never lost for that.</summary>
    public static Recorded Unanswered(Turn turn, Stage.AwaitingAnswer stage) =>
        turn.Record(stage.Confirmed!, stage.Amends, stage.Has, [.. stage.Symptoms, .. stage.Next]);

    /// <summary>What the rules say where some symptoms are not known: as grave as they could make it, and that it is so.</summary>
    public static Decision Decide(Turn turn, Confirmed confirmed, ImmutableHashSet<string> has, ImmutableHashSet<string> unknown, string? amends)
    {
        Decision known = turn.Decide(confirmed, has, amends);
        if (unknown.IsEmpty || turn.Decide(confirmed, has.Union(unknown), amends) is not { } worst || worst.Outcome <= known.Outcome)
        {
            return known;
        }

        var reason = new Reason(
            "symptoms.not-answered", $"{Sentence.List([.. unknown.Order(StringComparer.Ordinal)], "or")}: asked, no answer",
            "what is not known counts as the graver: proposal, to be approved by the home", RuleMark.CommonPractice, worst.Outcome);
        return known with { Outcome = worst.Outcome, Danger = worst.Danger, Recheck = worst.Recheck, Reasons = [reason, .. known.Reasons] };
    }

    private static Stage.AwaitingAnswer Single(Stage.AwaitingAnswer stage, ImmutableList<string> symptoms, ImmutableHashSet<string> has) =>
        stage with { Text = Text([symptoms[0]]), Symptoms = [symptoms[0]], Next = symptoms.RemoveAt(0), Has = has, Asked = 0, Tries = 0, Doubted = [] };

    private static string Text(ImmutableList<string> symptoms) =>
        Sentence.Capital(symptoms.Count > 2 ? string.Join(", ", symptoms.SkipLast(1)) + ", or " + symptoms[^1] : Sentence.List(symptoms, "or")) + "?";
}
