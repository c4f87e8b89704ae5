using System.Collections.Immutable;
using HandsFree.Core.Journal;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;

namespace HandsFree.Core.Dialogue;

/// <summary>What happens to a reading that was understood: refused as not possible, asked again as doubtful, or read back to be
/// confirmed, by yes or by saying it again.</summary>
internal static class Offering
{
    /// <summary>Said just now.</summary>
    /// <param name="turn">The turn.</param>
    /// <param name="reading">What was understood.</param>
    /// <param name="amends">The id of the reading that it will replace, or null.</param>
    /// <param name="corrects">The value that it corrects in one breath, or null.</param>
    public static Turn Offer(this Turn turn, Reading reading, string? amends = null, Quantity? corrects = null)
    {
        ResidentSet set = turn.Set;
        Understood understood = turn.Understand(reading, corrects);
        return set.StoppedAt is not null && !set.Late
            ? turn.Ask(new Stage.AwaitingAnswer(Question.TakenJustNow, "Taken since you came back? Say yes or before.")
            {
                Understood = understood,
                Said = turn.Said,
                Amends = amends,
                Tries = 0,
            })
            : turn.Offer(understood, turn.Said, amends);
    }

    /// <summary>What was heard, with what is known about the way it was taken.</summary>
    public static Understood Understand(this Turn turn, Reading reading, Quantity? corrects)
    {
        ResidentSet set = turn.Set;
        VitalSign sign = reading.Value.Sign;
        Circumstances how = set.Upcoming.For(sign).With(reading.How);
        bool display = turn.State.Machine && (sign is VitalSign.Pulse or VitalSign.BloodPressure) && how.Counted is null;
        how = how with
        {
            Machine = how.Machine || display,
            MinutesRested = sign == VitalSign.BloodPressure ? how.MinutesRested ?? RestClock.Rested(turn) : null,
            MinutesStanding = sign == VitalSign.BloodPressure ? how.MinutesStanding ?? PostureTest.MinutesStanding(turn, how) : null,
            SaidAsGuessFirst = how.SaidAsGuessFirst || (set.GuessedAt(sign) && how.Counted is null),
            TooEarly = how.TooEarly || Rechecking.IsTooEarly(turn, sign, turn.At),
        };
        return new Understood(turn.Heard, new Reading(reading.Value, how), corrects);
    }

    /// <summary>Understood, and known whether it is late.</summary>
    /// <param name="turn">The turn.</param>
    /// <param name="understood">What was understood.</param>
    /// <param name="said">How it was said.</param>
    /// <param name="amends">The id of the reading that it will replace, or null.</param>
    /// <param name="another">It was said in place of the value that was read back and is another: only a yes to its own read-back can save
    /// it, for what was misheard once is misheard again in the same way.</param>
    public static Turn Offer(this Turn turn, Understood understood, DialogueEvent.Utterance said, string? amends, bool another = false)
    {
        Reading reading = understood.Reading;
        Decision decision = turn.Decide(reading);
        turn = turn.WarnOfDanger(reading, decision);
        if (decision.Outcome == Outcome.AskAgain)
        {
            return turn.NotPossible(understood, decision, amends);
        }

        Understood? first = (turn.State.Stage as Stage.AwaitingValue)?.First;
        bool saidTwice = first?.Reading.Value == reading.Value;
        turn = first is null || saidTwice ? turn : turn.Discard(first, null, "second saying differs");
        if (turn.IsDoubtful(said, reading) || turn.IsRefused(reading.Value, said))
        {
            return turn.AskForDigits(understood, said, amends);
        }

        ReadBack readBack = ReadBack.Of(understood, turn.TextOf(reading), turn.At);
        int tries = turn.State.Stage.Tries;
        return another ? turn.Ask("That is another number.", new Stage.AwaitingConfirmation(readBack, amends) { Tries = tries, SaysYesOrNo = true })
            : !saidTwice && turn.NeedsSayingAgain(said, reading)
                ? turn.Ask(new Stage.AwaitingSayingAgain(readBack, amends) { Tries = tries, Hearings = turn.Doubted().And(said, reading) })
                : turn.Ask(new Stage.AwaitingConfirmation(readBack, amends) { Tries = tries });
    }

    /// <summary>More was said about a reading that is saved, or with its second saying: it is read back with that and needs a yes; the number
    /// is confirmed already.</summary>
    public static Turn OfferMore(this Turn turn, Reading reading, string? amends)
    {
        var understood = new Understood(turn.Heard, reading);
        Decision decision = turn.Decide(reading);
        return decision.Outcome == Outcome.AskAgain
            ? turn.NotPossible(understood, decision, amends)
            : turn.Ask(new Stage.AwaitingConfirmation(ReadBack.Of(understood, turn.TextOf(reading), turn.At), amends));
    }

    /// <summary>Whether a yes is not enough.</summary>
    public static bool NeedsSayingAgain(this Turn turn, DialogueEvent.Utterance said, Reading reading) =>
        ConfirmationStrength.NeedsSayingAgain(said, reading, r => turn.Decide(r), turn.Parts.Settings) || turn.IsFarFromUsual(reading);

    /// <summary>The read-back. That a machine is read was said once for the round and is not said with each value; nor is the site where
    /// this resident's temperature is always taken.</summary>
    public static string TextOf(this Turn turn, Reading reading) => ReadBackTexts.InShort(reading with
    {
        How = reading.How with
        {
            Machine = reading.How.Machine && !turn.State.Machine,
            Site = reading.How.Site == turn.Set.Resident.UsualSite ? null : reading.How.Site,
            // Litres are always read back: what they are misheard as must not be the usual ones in silence.
            Oxygen = reading.How.Oxygen is { IsRoomAir: true } && turn.Set.Resident.UsualOxygen is null or { IsRoomAir: true } ? null : reading.How.Oxygen,
        },
    }, turn.Parts.Settings.WeightUnit);

    // A value that was asked again is decided by all hearings together, without those that were refused.
    private static bool IsDoubtful(this Turn turn, DialogueEvent.Utterance said, Reading reading) => turn.Doubted() is { IsEmpty: false } before && !said.Typed
        ? Together.IsDoubtful(before.And(said, reading), reading.Value, turn.Set.Refused, turn.Parts.Settings)
        : Doubt.IsDoubtful(said, turn.Parts.Settings.DoubtMargin, turn.Parts.Settings);

    private static ImmutableList<HeardValue> Doubted(this Turn turn) =>
        turn.State.Stage is Stage.AwaitingValue { Why: WhyAsked.Doubtful, Hearings: var hearings } ? hearings : [];

    /// <summary>Keeps what was heard and not taken as a value.</summary>
    public static Turn Discard(this Turn turn, Understood understood, string? readBack, string why) =>
        turn.Write(id => new AttemptDiscarded(
            id, turn.State.Aide, turn.At, turn.Set.Resident.Id, understood.Heard, understood.Reading, readBack, why));

    public static Turn WarnOfDanger(this Turn turn, Reading reading, Decision decision)
    {
        VitalSign sign = reading.Value.Sign;
        return decision.Danger && !turn.Set.DangerSaid.Contains(sign)
            ? turn.Say("Use the call light now.").With(turn.Set with { DangerSaid = turn.Set.DangerSaid.Add(sign) })
            : turn;
    }

    // A refused value is not offered again, unless it is said digit by digit or typed (safety 11).
    private static bool IsRefused(this Turn turn, Quantity value, DialogueEvent.Utterance said) =>
        turn.Set.Refused.Contains(value) && !said.Typed && !DigitWords.SaidDigitByDigit(said.Words);

    private static Turn AskForDigits(this Turn turn, Understood understood, DialogueEvent.Utterance said, string? amends)
    {
        Stage stage = turn.State.Stage;
        var next = new Stage.AwaitingValue(
            understood.Reading.Value.Sign, understood.Reading.How, WhyAsked.Doubtful, understood, amends)
        {
            Tries = stage.Tries,
            Hearings = turn.Doubted().And(said, understood.Reading),
        };
        return stage is Stage.AwaitingValue { Why: WhyAsked.Doubtful } asked
            ? turn.Go(next with { Asked = asked.Asked }).TryAgain("Not sure.")
            : turn.Ask("Not sure.", next);
    }

    // Asked again by a rule: it counts as one of the rechecks, so that a value which keeps coming is believed in the end and reported.
    private static Turn NotPossible(this Turn turn, Understood understood, Decision decision, string? amends)
    {
        string text = ReadBackTexts.Of(understood.Reading);
        VitalSign sign = understood.Reading.Value.Sign;
        ResidentSet set = turn.Set;
        turn = decision.Recheck is null
            ? turn
            : turn.With(set with { RechecksAsked = set.RechecksAsked.SetItem(sign, set.RechecksDone(sign) + 1) });
        return turn.Discard(understood, text, "not possible")
            .AskForAnother(sign, understood.Reading.How, text, amends, decision.Recheck?.Instruction ?? "");
    }

    /// <summary>A value that can't be: repeats the number and asks for another.</summary>
    /// <param name="turn">The turn.</param>
    /// <param name="sign">Which vital sign.</param>
    /// <param name="how">What was said about the way it was taken; the count, and an arm that must not be used, are not kept.</param>
    /// <param name="text">The value, digit by digit.</param>
    /// <param name="amends">The id of the reading that it will replace, or null.</param>
    /// <param name="instruction">What the rules say to do, or empty.</param>
    public static Turn AskForAnother(
        this Turn turn, VitalSign sign, Circumstances how, string text, string? amends, string instruction = "")
    {
        bool wrongArm = how.Arm is { } arm && turn.Set.Resident.ArmsNotToBeUsed.ContainsKey(arm);
        string words = wrongArm ? ForbiddenArm(turn.Set.Resident, how.Arm!.Value) : Sentence.Join($"{Sentence.Capital(text)}, is not possible.", instruction);
        Circumstances kept = how with { Counted = null, CountedSeconds = null, Arm = wrongArm ? null : how.Arm };
        return turn.State.Stage is Stage.AwaitingValue asked
            ? turn.Go(new Stage.AwaitingValue(sign, kept, WhyAsked.NotPossible, null, amends) { Asked = asked.Asked, Tries = asked.Tries })
                .TryAgain(words)
            : turn.Fail(words, new Stage.AwaitingValue(sign, kept, WhyAsked.NotPossible, null, amends) { Tries = turn.State.Stage.Tries });
    }

    private static string ForbiddenArm(Resident resident, Arm arm) =>
        $"The {(arm == Arm.Left ? "left" : "right")} arm is not to be used{(resident.ArmsNotToBeUsed[arm] is { Length: > 0 } why ? $": {why}" : "")}. Measure on the other arm.";
}
