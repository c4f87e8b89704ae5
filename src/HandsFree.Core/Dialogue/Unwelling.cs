using HandsFree.Core.Journal;
using HandsFree.Core.Meanings;
using HandsFree.Core.Reports;

namespace HandsFree.Core.Dialogue;

/// <summary>"She fell", "he is dizzy", "chest pain": heard wherever somebody speaks, for help does not wait for a question that is open
/// (safety 15 to 17). The call light is named at once; then one question, for a short word is easily heard in a noise. Yes, or the same
/// said again, reports it now and leaves what waited; no goes back to what waited. Without an answer it is reported as not confirmed:
/// who helps somebody up does not answer. Where nobody is identified there is nobody to report on.</summary>
internal static class Unwelling
{
    private const string CallLight = "Use the call light now.";

    /// <summary>Said again within this time it is the same fall (common practice, no source).</summary>
    private static readonly TimeSpan SameEvent = TimeSpan.FromMinutes(10);

    public static Turn Hear(Turn turn)
    {
        string rule = RuleOf(turn.Meant<Meaning.Command>().Word);
        return turn.State switch
        {
            { Set: null } => turn.Say(CallLight),
            { Stage: Stage.AwaitingAnswer { Question: Question.Unwell } } => Answered(turn, true),
            _ when IsReported(turn, rule) => turn.Say($"{CallLight} It is reported already."),
            _ => Ask(turn, rule),
        };
    }

    /// <summary>While the journal writes: that goes on.</summary>
    public static Turn HearSaving(Turn turn) => turn.Stage<Stage.Saving>().After is Stage.Ended
        ? turn.Say(CallLight)
        : Hear(turn.Go(turn.Stage<Stage.Saving>().After));

    /// <summary>What could not be written is tried again with the next batch.</summary>
    public static Turn HearUnsaved(Turn turn)
    {
        var stage = turn.Stage<Stage.NotSaved>();
        return stage.After is Stage.Ended
            ? turn.Say(CallLight)
            : Hear(turn with { State = turn.State with { Unwritten = turn.State.Unwritten.AddRange(stage.Events), Stage = stage.After } });
    }

    public static Turn Answered(Turn turn, bool yes)
    {
        var stage = turn.Stage<Stage.AwaitingAnswer>();
        Unwell what = stage.Unwell!;
        return yes
            ? Reported(turn, what, "").Save()
            : turn.Write(id => new AttemptDiscarded(id, turn.State.Aide, turn.At, turn.Set.Resident.Id, what.Heard, null, stage.Text, "no"))
                .Ask("Not reported.", what.Before with { Asked = 0 });
    }

    /// <summary>Nobody answered.</summary>
    public static Recorded Unanswered(Turn turn, Unwell what) => Reported(turn, what, ", heard and not confirmed");

    private static Turn Ask(Turn turn, string rule)
    {
        // A count through which somebody speaks is none any more.
        Turn free = turn.State.Stage is Stage.Counting ? turn.Abandon("dizzy or fell") : turn;
        Stage before = turn.State.Stage is Stage.Counting ? free.Set.Base() : turn.State.Stage;
        string first = rule == ChestPain ? CallLight : $"{CallLight} Help the resident sit or lie down.";
        string question = rule == ChestPain ? "Chest pain, yes or no?" : "Dizzy or a fall, yes or no?";
        return free.Ask(first, new Stage.AwaitingAnswer(Question.Unwell, question) { Unwell = new Unwell(rule, turn.Heard, before) });
    }

    private static Recorded Reported(Turn turn, Unwell what, string doubt)
    {
        string situation = (what.Rule == ChestPain ? "chest pain" : turn.Set.Posture == PostureStep.None ? "dizzy or fell" : "dizzy or fell in the posture test") + doubt;
        Turn left = PostureTest.End(turn.Go(what.Before).Abandon("dizzy or fell").AbandonHeld("dizzy or fell"));
        return left.OpenReport(ReportUrgency.Now, situation, what.Rule);
    }

    private static bool IsReported(Turn turn, string rule) => turn.Known()
        .OfType<ReportOpened>().Any(r => r.Resident == turn.Set.Resident.Id && r.Rules.Contains(rule) && turn.At - r.At < SameEvent);

    private const string ChestPain = "symptoms.chest-pain";

    private static string RuleOf(CommandWord word) => word == CommandWord.ChestPain ? ChestPain : "dizzy-or-fell";
}
