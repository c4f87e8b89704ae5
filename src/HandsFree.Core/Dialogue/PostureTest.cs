using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Dialogue;

/// <summary>Pressures lying and after one and three minutes of standing (Freeman et al. 2011: within 3 minutes). Only on order and with a
/// second person; "dizzy" or "fell" ends it (safety 17).</summary>
internal static class PostureTest
{
    private static readonly TimeSpan One = TimeSpan.FromMinutes(1);
    private static readonly TimeSpan Three = TimeSpan.FromMinutes(3);

    public static Turn Begin(Turn turn) => turn.Set.Resident.PostureTest is null
        ? turn.Say("A posture test is not ordered.")
        : turn.Ask(new Stage.AwaitingAnswer(Question.SecondPerson, "Is a second person with you?"));

    public static Turn Answered(Turn turn, bool yes) => yes
        ? Await(turn, PostureStep.Lying, BodyPosition.Lying).Say("The blood pressure, lying down.")
        : turn.Go(turn.Set.Base()).Say("Only with a second person.");

    /// <summary>The resident stands: the minutes run from now.</summary>
    public static Turn Stands(Turn turn) => turn
        .With(turn.Set with { Posture = PostureStep.AfterOneMinute, PostureAsked = PostureStep.None, StoodAt = turn.At, Upcoming = turn.Set.Upcoming.With(new Circumstances { Position = BodyPosition.Standing }) })
        .Go(turn.Set.Base())
        .Do(new Effect.StartTimer(TimerNames.StandingOne, One))
        .Do(new Effect.StartTimer(TimerNames.StandingThree, Three))
        .Say("In one minute the blood pressure. Say dizzy, and it ends.");

    /// <summary>Wherever nothing else is in hand: a pressure whose minute has come, also while another question was open, is asked for,
    /// once. When three minutes are over, the one of the first minute can't be taken any more.</summary>
    public static Turn AtRest(Turn turn)
    {
        if (turn.State is not { Set: { StoodAt: { } since } set, Stage: Stage.Ready or Stage.AwaitingRecheck } || turn.State.Stage.Silent)
        {
            return turn;
        }

        TimeSpan standing = turn.At - since;
        PostureStep due = standing >= Three ? PostureStep.AfterThreeMinutes : standing >= One ? PostureStep.AfterOneMinute : PostureStep.None;
        return due >= set.Posture && due > set.PostureAsked
            ? Await(turn, due, BodyPosition.Standing).Asked(due).Say("Now the blood pressure, standing.")
            : turn;
    }

    /// <summary>How long the resident has stood at this pressure, in whole minutes; null outside of a test.</summary>
    public static int? MinutesStanding(Turn turn, Circumstances how) =>
        turn.Set.StoodAt is { } since && how.Position == BodyPosition.Standing ? (int)(turn.At - since).TotalMinutes : null;

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
        Turn turn = recorded.Turn.With(set with { Posture = next, StoodAt = next == PostureStep.None ? null : set.StoodAt });
        return next == PostureStep.AfterThreeMinutes
            ? new Recorded(turn.With(turn.Set with { Upcoming = turn.Set.Upcoming.With(new Circumstances { Position = BodyPosition.Standing }) }), Sentence.Join(recorded.Text, text))
            : new Recorded(turn, Sentence.Join(recorded.Text, text));
    }

    public static Turn End(Turn turn) => turn.Set.Posture == PostureStep.None
        ? turn
        : turn.With(turn.Set with { Posture = PostureStep.None, StoodAt = null, Upcoming = turn.Set.Upcoming.Without(VitalSign.BloodPressure) })
            .Do(new Effect.StopTimer(TimerNames.StandingOne))
            .Do(new Effect.StopTimer(TimerNames.StandingThree));

    private static Turn Asked(this Turn turn, PostureStep step) => turn.With(turn.Set with { PostureAsked = step });

    private static Turn Await(Turn turn, PostureStep step, BodyPosition position) => turn
        .With(turn.Set with { Posture = step, Upcoming = turn.Set.Upcoming.With(new Circumstances { Position = position }) })
        .Go(new Stage.Ready { Asked = 1, Led = VitalSign.BloodPressure });
}
