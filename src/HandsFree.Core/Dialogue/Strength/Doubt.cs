using HandsFree.Core.Hearings;
using HandsFree.Core.Meanings;

namespace HandsFree.Core.Dialogue;

/// <summary>Every meaning is subject to doubt, not values alone: what may as well have been something else is not obeyed. Where an answer
/// was awaited it counts as not understood and is asked again; where nothing was asked it is passed over in silence (safety 4). What is said
/// after that is decided by itself where it is sure, else by both hearings together.</summary>
internal static class Doubt
{
    /// <summary>What an event counts as, and the state that remembers a doubtful answer.</summary>
    public static (DialogueState State, DialogueEvent Event) Weigh(Parts parts, DialogueState state, DialogueEvent happened)
    {
        if (happened is not DialogueEvent.Utterance { Typed: false } said || LeastMargin(said.Meaning, state, parts.Settings) is not { } least)
        {
            return (state, happened);
        }

        DialogueEvent.Utterance heard = IdentityHeard.Of(parts.Roster, said);
        if (!IsDoubtful(heard, least, parts.Settings))
        {
            return (state, heard);
        }

        var notUnderstood = new DialogueEvent.NotAReading(said.At);
        if (!state.Listening.AnswerAwaited || state.Kind == StateKind.Locked)
        {
            return (state, notUnderstood); // digits that may unlock are not remembered
        }

        IReadOnlyList<Possible<Meaning>> both = TwoHearings.Together(state.Stage.Doubted, heard.Alternatives, []);
        DialogueEvent.Utterance together = heard with
        {
            Probability = both.Count > 0 ? both[0].Probability : 0,
            Margin = TwoHearings.Margin(both),
            Doubtful = both.Count > 0 && both[0].Probability < parts.Settings.SureFrom,
        };
        // A meaning that is not the one just heard is never chosen.
        return state.Stage.Doubted.Count > 0 && both.Count > 0 && both[0].Value == heard.Meaning && !IsDoubtful(together, least, parts.Settings)
            ? (state, together)
            : (state with { Stage = state.Stage with { Doubted = [.. both] } }, notUnderstood);
    }

    /// <summary>Whether a hearing is so close to another that the program does not choose.</summary>
    /// <param name="said">The hearing.</param>
    /// <param name="leastMargin">The margin from which it does.</param>
    /// <param name="settings">From when a probability is sure.</param>
    public static bool IsDoubtful(DialogueEvent.Utterance said, double leastMargin, DialogueSettings settings) =>
        !said.Typed && ((said.Doubtful && said.Probability < settings.SureFrom) || said.Margin < leastMargin);

    /// <summary>The margin that a meaning needs; null where no doubt holds it back.</summary>
    private static double? LeastMargin(Meaning meaning, DialogueState state, DialogueSettings settings) => meaning switch
    {
        // A doubtful value is asked for digit by digit.
        Meaning.ReadingSaid or Meaning.ValueAlone or Meaning.Correction or Meaning.CountSaid or Meaning.NotPossible => null,
        // Silence at once, words, the call light, and a question do no harm when misheard, and help is not delayed.
        Meaning.Command
        {
            Word: CommandWord.Stop or CommandWord.Repeat or CommandWord.Help or CommandWord.Options or CommandWord.NurseNeeded
                or CommandWord.Unwell or CommandWord.ChestPain
        } => null,
        // Read back before anything is kept: only what the engine itself called doubtful is held back.
        Meaning.NotTaken => 0,
        // The round or the resident is left, with all that is open: in noise a reading whose end was covered became "goodbye".
        Meaning.Command { Word: CommandWord.Goodbye or CommandWord.NextResident or CommandWord.Done or CommandWord.WrongResident } => settings.CautionMargin,
        Meaning.Place when state.Set is not null => settings.CautionMargin,
        _ => settings.DoubtMargin,
    };
}
