using System.Globalization;
using HandsFree.Core.Handover;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Dialogue;

/// <summary>What each state says. The first try is short, the second gives an example. What can be said is listed on "options" alone.</summary>
internal static class Prompts
{
    public static string For(Stage stage, Parts parts, DialogueState state) => Sentence.Join(Room(stage, state), stage.Asked switch
    {
        0 => First(stage, parts),
        1 => Second(stage, parts),
        _ => Third(stage, parts),
    });

    /// <summary>"You can say" with what the state's grammar offers; empty where the grammar offers nothing.</summary>
    public static string Options(Listening listening, DialogueSettings settings)
    {
        IReadOnlyList<string> phrases = settings.SamplePhrases(listening);
        return phrases.Count == 0 ? "" : $"You can say: {Sentence.List(phrases, "or")}.";
    }

    // Who was not understood may have named another room: then the read-back says whose value it is.
    private static string Room(Stage stage, DialogueState state) =>
        state is { NamesRoom: true, Set: { } set } && stage is Stage.AwaitingConfirmation or Stage.AwaitingSayingAgain
            ? $"{HandoverTexts.Place(set.Resident)}."
            : "";

    private static string First(Stage stage, Parts parts) => stage switch
    {
        Stage.AwaitingRoom { Room: not null } => "Which bed?",
        Stage.AwaitingRoom => "Room and bed?",
        Stage.AwaitingName s => Sentence.Join(s.Note, SameName(s, parts), $"{s.Resident.Name}? Look first."),
        Stage.AwaitingSecondIdentifier s => parts.Roster.BirthdayTellsApart(s.Resident) ? "Day and month of birth?" : "The number on band or photo?",
        Stage.AwaitingConfirmation { SaysYesOrNo: true } s => $"{Sentence.Capital(s.ReadBack.Text)}. Yes or no?",
        Stage.AwaitingConfirmation s => Sentence.Capital(s.ReadBack.Text) + ".",
        Stage.AwaitingSayingAgain { ReadBack.Reading.How.CountedSeconds: not null } s =>
            $"{Sentence.Capital(s.ReadBack.Text)}. Say again what you counted, digit by digit.",
        Stage.AwaitingSayingAgain s => $"{Sentence.Capital(s.ReadBack.Text)}. Say the number again, digit by digit.",
        Stage.AwaitingValue { Why: WhyAsked.Doubtful } => "Say the digits, one by one.",
        Stage.AwaitingValue { How.CountedSeconds: not null } => "How many did you count?",
        Stage.AwaitingValue s => $"Say the {SignNames.Of(s.Sign)}.",
        Stage.AwaitingRecheck s => s.Instruction,
        Stage.AwaitingCount => "How many?",
        Stage.AwaitingNotTaken s => Sentence.Capital(s.ReadBack) + ".",
        Stage.AwaitingAnswer s => s.Text,
        Stage.AwaitingUndo s => $"Remove {s.Item.Text}?",
        Stage.NotSaved => "Not saved. Try again?",
        Stage.Paused => "Waiting.",
        Stage.Locked { Spoken: true } => "Locked. Say your digits, or type your PIN.",
        Stage.Locked => "Locked. Type your PIN.",
        _ => "",
    };

    private static string Second(Stage stage, Parts parts) => stage switch
    {
        Stage.AwaitingRoom => Sentence.Join("Say room and bed.", ExamplePlace(parts.Roster)),
        Stage.AwaitingName s => $"Is this {s.Resident.Name}? Look at the band or the photo, then answer.",
        Stage.AwaitingSecondIdentifier s => parts.Roster.BirthdayTellsApart(s.Resident)
            ? "Say the birthday. Example: March third. Or say band and its number."
            : "The birthday is not enough here. Say band, and the number on the band or the photo.",
        Stage.AwaitingConfirmation s => $"{Sentence.Capital(s.ReadBack.Text)}. Is that what you said?",
        Stage.AwaitingSayingAgain s => $"{Sentence.Capital(s.ReadBack.Text)}. Say it once more. Example: {Example(s.ReadBack.Reading.Value.Sign)}.",
        Stage.AwaitingValue s => $"Say each digit of the {SignNames.Of(s.Sign)}. Example: {Example(s.Sign)}.",
        Stage.AwaitingRecheck s => $"Now the {SignNames.Of(s.Sign)}. Example: {Example(s.Sign)}.",
        Stage.AwaitingCount => "Say the number that you counted. Example: four two.",
        Stage.AwaitingNotTaken s => $"{Sentence.Capital(s.ReadBack)}. Is that what you said?",
        Stage.AwaitingAnswer s => $"Please answer. {s.Text}",
        Stage.AwaitingUndo s => $"The last one was {s.Item.Text}. Remove it?",
        Stage.NotSaved => "The record does not work. Try again, or write it on paper?",
        _ => First(stage, parts),
    };

    // What is needed to answer, and how to hear more.
    private static string Third(Stage stage, Parts parts) => stage switch
    {
        Stage.AwaitingConfirmation s => Sentence.Capital(s.ReadBack.Text) + ".",
        Stage.AwaitingSayingAgain => First(stage, parts),
        Stage.AwaitingNotTaken s => Sentence.Capital(s.ReadBack) + ".",
        Stage.AwaitingAnswer s => s.Text,
        Stage.AwaitingUndo s => $"Remove {s.Item.Text}?",
        _ => Second(stage, parts),
    };

    // A place that this home has.
    private static string ExamplePlace(Roster roster) => roster.Residents.FirstOrDefault() is { } one
        ? $"Example: room {one.Room.ToString(CultureInfo.InvariantCulture)}{(one.Bed is { } bed ? $", bed {bed.ToUpperInvariant()}" : "")}."
        : "";

    private static string SameName(Stage.AwaitingName stage, Parts parts) =>
        parts.Roster.SharesName(stage.Resident) ? "Careful, two residents have this name." : "";

    private static string Example(VitalSign sign) => sign switch
    {
        VitalSign.Temperature => "nine eight point six",
        VitalSign.Pulse => "seven two",
        VitalSign.Respirations => "one six",
        VitalSign.BloodPressure => "one two zero over eight zero",
        VitalSign.OxygenSaturation => "nine seven",
        VitalSign.Weight => "one five zero",
        VitalSign.Pain => "four",
        _ => throw new ArgumentOutOfRangeException(nameof(sign), sign, "no such vital sign"),
    };
}
