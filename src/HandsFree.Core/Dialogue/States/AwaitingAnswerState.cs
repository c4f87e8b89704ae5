using HandsFree.Core.Observations;
using HandsFree.Core.Reports;

namespace HandsFree.Core.Dialogue;

/// <summary>A question was asked: taken just now, a symptom, woke to the voice, dizzy or fell, report a worry.</summary>
internal static class AwaitingAnswerState
{
    public static Page Page() => new Page(StateKind.AwaitingAnswer)
        .WithCommands()
        .WithTries(StateKind.Ready, StateKind.AwaitingRecheck, StateKind.Saving)
        .WithYesNoAlone()
        .WithLeaving()
        .On(Trigger.Yes, "go on with yes", turn => Answer(turn, true), Answered)
        .On(Trigger.No, "go on with no", turn => Answer(turn, false), [.. Answered, .. Resumed])
        .On([Trigger.Cancel, Trigger.GoBack], "drop what is not confirmed", Cancel, StateKind.Ready, StateKind.AwaitingRecheck, StateKind.AwaitingAnswer);

    private static StateKind[] Answered =>
    [
        StateKind.AwaitingAnswer,
        StateKind.Saving, StateKind.AwaitingConfirmation, StateKind.AwaitingSayingAgain, StateKind.AwaitingValue, StateKind.Ready,
        StateKind.AwaitingRecheck,
    ];

    // Where "dizzy" came in between.
    private static StateKind[] Resumed =>
    [
        StateKind.AwaitingCount, StateKind.AwaitingNotTaken, StateKind.AwaitingUndo, StateKind.Paused, StateKind.AwaitingAnswer,
    ];

    private static Turn Answer(Turn turn, bool yes) => turn.Stage<Stage.AwaitingAnswer>() switch
    {
        { Question: Question.TakenJustNow, Understood: { } understood, Said: { } said } s =>
            yes ? turn.With(turn.Set with { StoppedAt = null }).Offer(understood, said, s.Amends)
                : turn.With(turn.Set with { Late = true }).Offer(MeasuredBefore(turn, understood), said, s.Amends),
        { Question: Question.Symptom, Confirmed: not null } => Symptoming.Answered(turn, yes),
        { Question: Question.WokeToVoice, Asleep: { } asleep } =>
            turn.RecordNotTaken(asleep, yes ? Sleeping.Woke : Sleeping.DidNotWake).Save(),
        { Question: Question.Unwell } => Unwelling.Answered(turn, yes),
        { Question: Question.SecondPerson } => PostureTest.Answered(turn, yes),
        { Question: Question.Worried } when yes => turn.OpenReport(ReportUrgency.ThisShift, "the aide is worried", "aide-worried").Save(),
        { Question: Question.WrongResident } when yes => Undoing.TakeBackVisit(turn),
        { Question: Question.WrongResident } => turn.Go(turn.Set.Base()).Say("It stays."),
        { Question: Question.Worried } => turn.Go(turn.Set.Base()).Say("All right."),
        var stage => throw new InvalidOperationException($"{stage.Question} waits for nothing"),
    };

    private static Understood MeasuredBefore(Turn turn, Understood understood)
    {
        Reading reading = understood.Reading;
        bool tooEarly = turn.Set.StoppedAt is { } stopped && Rechecking.IsTooEarly(turn, reading.Value.Sign, stopped);
        return understood with { Reading = reading with { How = reading.How with { TooEarly = tooEarly } } };
    }

    // What was confirmed already is not dropped: its question comes first.
    private static Turn Cancel(Turn turn) =>
        turn.Stage<Stage.AwaitingAnswer>() is { Confirmed: null, Asleep: null, Unwell: null } ? Always.Cancel(turn) : Always.AnswerFirst(turn);
}
