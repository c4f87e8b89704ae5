using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;

namespace HandsFree.Core.Dialogue;

/// <summary>Pressures lying and after one and three minutes of standing (Freeman et al. 2011: within 3 minutes). Only on order and with a
/// second person; "dizzy" or "fell" ends it and is reported now (safety 17).</summary>
internal static class PostureTest
{
    public static Turn Begin(Turn turn) => turn.Set.Resident.PostureTestOrderedBy is null
        ? turn.Say("A posture test is not ordered.")
        : turn.Ask(new Stage.AwaitingAnswer(Question.SecondPerson, "Is a second person with you?"));

    public static Turn Answered(Turn turn, bool yes) => yes
        ? Await(turn, PostureStep.Lying, BodyPosition.Lying).Say("The blood pressure, lying down.")
        : turn.Go(turn.Set.Base()).Say("Only with a second person.");

    /// <summary>The resident stands: the minutes run from now.</summary>
    public static Turn Stands(Turn turn) => turn
        .With(turn.Set with { Posture = PostureStep.AfterOneMinute, Upcoming = turn.Set.Upcoming.With(new Circumstances { Position = BodyPosition.Standing }) })
        .Do(new Effect.StartTimer(TimerNames.StandingOne, TimeSpan.FromMinutes(1)))
        .Do(new Effect.StartTimer(TimerNames.StandingThree, TimeSpan.FromMinutes(3)))
        .Say("In one minute the blood pressure. Say dizzy, and it ends.");

    /// <summary>The minute has come: the pressure is asked for; null where the timer is another.</summary>
    public static Turn? Due(Turn turn)
    {
        string name = ((DialogueEvent.TimerElapsed)turn.Event).Name;
        return name is TimerNames.StandingOne or TimerNames.StandingThree && turn.Set.Posture >= PostureStep.AfterOneMinute
            ? Await(turn, name == TimerNames.StandingOne ? PostureStep.AfterOneMinute : PostureStep.AfterThreeMinutes, BodyPosition.Standing)
                .Say("Now the blood pressure, standing.")
            : null;
    }

    /// <summary>A pressure was recorded: what comes next is said with "Saved".</summary>
    public static Recorded After(this Recorded recorded, Reading reading)
    {
        ResidentSet set = recorded.Turn.Set;
        (PostureStep next, string text) = (set.Posture, reading) switch
        {
            (PostureStep.Lying, { Value: BloodPressure, How.Position: BodyPosition.Lying }) =>
                (PostureStep.StandingUp, "Help the resident stand up, then say standing."),
            (PostureStep.AfterOneMinute, { Value: BloodPressure }) => (PostureStep.AfterThreeMinutes, "Once more at three minutes."),
            (PostureStep.AfterThreeMinutes, { Value: BloodPressure }) => (PostureStep.None, "The posture test is done."),
            var (same, _) => (same, ""),
        };
        Turn turn = recorded.Turn.With(set with { Posture = next });
        return next == PostureStep.AfterThreeMinutes
            ? new Recorded(turn.With(turn.Set with { Upcoming = turn.Set.Upcoming.With(new Circumstances { Position = BodyPosition.Standing }) }), Sentence.Join(recorded.Text, text))
            : new Recorded(turn, Sentence.Join(recorded.Text, text));
    }

    /// <summary>"Dizzy" or "fell".</summary>
    public static Turn Unwell(Turn turn)
    {
        string what = turn.Set.Posture == PostureStep.None ? "dizzy or fell" : "dizzy or fell in the posture test";
        Turn ended = End(turn).Say("Help the resident sit or lie down.");
        return ended.OpenReport(ReportUrgency.Now, what, "dizzy-or-fell").Save();
    }

    public static Turn End(Turn turn) => turn.Set.Posture == PostureStep.None
        ? turn
        : turn.With(turn.Set with { Posture = PostureStep.None, Upcoming = turn.Set.Upcoming.Without(VitalSign.BloodPressure) })
            .Do(new Effect.StopTimer(TimerNames.StandingOne))
            .Do(new Effect.StopTimer(TimerNames.StandingThree));

    private static Turn Await(Turn turn, PostureStep step, BodyPosition position) => turn
        .With(turn.Set with { Posture = step, Upcoming = turn.Set.Upcoming.With(new Circumstances { Position = position }) })
        .Go(new Stage.Ready { Asked = 1, Led = VitalSign.BloodPressure });
}
