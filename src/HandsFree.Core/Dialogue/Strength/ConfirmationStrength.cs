using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Rules;

namespace HandsFree.Core.Dialogue;

/// <summary>How strong a confirmation a value needs: it follows the worst of the value heard, its runner-up and its confusable
/// partner, so that an abnormal value can't pass as a normal one (safety 11).</summary>
internal static class ConfirmationStrength
{
    /// <summary>Whether a yes is not enough and the value must be said again.</summary>
    /// <param name="said">How it was said.</param>
    /// <param name="reading">What was understood.</param>
    /// <param name="decide">The rules, for this resident now.</param>
    /// <param name="settings">Margins and what the engine can be trusted with.</param>
    public static bool NeedsSayingAgain(
        DialogueEvent.Utterance said, Reading reading, Func<Reading, Decision> decide, DialogueSettings settings)
    {
        bool digits = said.Typed || DigitWords.SaidDigitByDigit(said.Words);
        return WillBeTold(decide(reading))
            || (settings.DigitByDigit && !digits)
            || (!digits && ConfusablePairs.AlwaysInDigits(reading.Value))
            || (!digits && ConfusablePairs.Partners(reading.Value).Any(p => WillBeTold(decide(reading with { Value = p }))))
            || RunnerUp(said, reading, settings) is { } other && WillBeTold(decide(other));
    }

    private static bool WillBeTold(Decision decision) =>
        decision.Danger || decision.Outcome is Outcome.ReportThisShift or Outcome.ReportNow;

    private static Reading? RunnerUp(DialogueEvent.Utterance said, Reading reading, DialogueSettings settings)
    {
        if (!(said.Margin < settings.CautionMargin))
        {
            return null;
        }

        return said.RunnerUp switch
        {
            Meaning.ReadingSaid other when other.Reading.Value.Sign == reading.Value.Sign => other.Reading,
            Meaning.ValueAlone other => Same(reading, other.Number),
            Meaning.Correction other => Same(reading, other.Number),
            _ => null,
        };
    }

    private static Reading? Same(Reading reading, SpokenNumber number) =>
        QuantityFrom.Number(reading.Value.Sign, number, QuantityFrom.UnitOf(reading.Value)) is { } value
            ? reading with { Value = value }
            : null;
}
