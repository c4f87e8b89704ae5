using HandsFree.Core.Handover;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;

namespace HandsFree.Core.Dialogue;

/// <summary>What the screen shows in each state.</summary>
internal static class Screens
{
    public static ScreenView For(DialogueState state)
    {
        ScreenView screen = state.Stage switch
        {
            Stage.AwaitingRoom => Waits("room and bed"),
            Stage.AwaitingName s => Waits("look, then yes or no") with { Place = HandoverTexts.Place(s.Resident) },
            Stage.AwaitingSecondIdentifier s => Waits("second identifier") with { Place = HandoverTexts.Place(s.Resident) },
            Stage.Ready => Waits("readings"),
            Stage.AwaitingConfirmation s => Value(s.ReadBack.Reading, "yes or no"),
            Stage.AwaitingSayingAgain s => Value(s.ReadBack.Reading, "say it again"),
            Stage.AwaitingValue s => Waits("the value") with { What = SignNames.Of(s.Sign) },
            Stage.AwaitingRecheck s => Waits(s.Instruction) with { What = SignNames.Of(s.Sign) },
            // Breaths are counted without a word: the resident must not know, and the aide must.
            Stage.Counting { Sign: VitalSign.Respirations } => Waits("count on, sixty seconds"),
            Stage.Counting s => Waits(s.Seconds == 60 ? "count the pulse, sixty seconds" : "count the pulse, thirty seconds"),
            Stage.AwaitingCount => Waits("the count"),
            Stage.AwaitingNotTaken s => Waits("yes or no") with { What = s.ReadBack },
            Stage.AwaitingAnswer s => Waits(s.Text),
            Stage.AwaitingUndo s => Waits("yes or no") with { What = $"remove {s.Item.Text}" },
            Stage.Saving => Waits("saving"),
            Stage.NotSaved => Waits("NOT SAVED: try again, yes or no"),
            Stage.Paused => Waits("paused"),
            Stage.Locked { Refused: { Length: > 0 } why } => Waits($"locked: {why}"),
            Stage.Locked => Waits("locked: type your PIN"),
            Stage.Handover => Waits("handover"),
            Stage.Ended => Waits("goodbye"),
            _ => throw new ArgumentOutOfRangeException(nameof(state), state.Kind, "no screen for this state"),
        };
        screen = state.Notice.Length > 0 ? screen with { Awaited = $"{state.Notice}; {screen.Awaited}" } : screen;
        return state.Set is { } set ? screen with { Place = HandoverTexts.Place(set.Resident) } : screen;
    }

    private static ScreenView Waits(string awaited) => new("", "", "", awaited);

    private static ScreenView Value(Reading reading, string awaited) => new("", string.Join(", ", new[] { What(reading.Value) }.Concat(ReadBackTexts.Circumstances(reading.How))), Digits(reading.Value), awaited);

    private static string What(Quantity value) => value switch
    {
        BodyTemperature t => t.Unit == TemperatureUnit.Fahrenheit ? "temperature, °F" : "temperature, °C",
        BodyWeight w => w.Unit == WeightUnit.Pounds ? "weight, lb" : "weight, kg",
        OxygenSaturation => "oxygen, %",
        BloodPressure => "blood pressure, mmHg",
        HeartRate or RespiratoryRate => $"{SignNames.Of(value.Sign)}, per minute",
        _ => SignNames.Of(value.Sign),
    };

    private static string Digits(Quantity value) => value switch
    {
        BodyTemperature t => Text(t.Degrees),
        BodyWeight w => Text(w.Value),
        OxygenSaturation o => Text(o.Percent),
        BloodPressure p => $"{p.Systolic}/{p.Diastolic}",
        HeartRate h => Text(h.PerMinute),
        RespiratoryRate r => Text(r.PerMinute),
        PainScore p => Text(p.OfTen),
        _ => throw new ArgumentOutOfRangeException(nameof(value), value, "no such quantity"),
    };

    private static string Text(decimal number) => number.ToString("0.#", System.Globalization.CultureInfo.InvariantCulture);
}
