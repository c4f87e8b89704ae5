using HandsFree.Core.Meanings;

namespace HandsFree.Core.Dialogue;

/// <summary>Which kind an event is.</summary>
internal static class Triggers
{
    public static Trigger Of(DialogueEvent happened) => happened switch
    {
        DialogueEvent.Utterance said => Of(said.Meaning),
        DialogueEvent.NotAReading => Trigger.NotAReading,
        DialogueEvent.NothingHeard => Trigger.NothingHeard,
        DialogueEvent.PartOfAReading => Trigger.PartOfAReading,
        DialogueEvent.TimerElapsed => Trigger.TimerElapsed,
        DialogueEvent.Played => Trigger.Played,
        DialogueEvent.Saved => Trigger.Saved,
        DialogueEvent.SaveFailed => Trigger.SaveFailed,
        DialogueEvent.LockDue => Trigger.LockDue,
        DialogueEvent.Unlocked => Trigger.Unlocked,
        DialogueEvent.UnlockRefused => Trigger.UnlockRefused,
        DialogueEvent.Resumed => Trigger.Resumed,
        _ => throw new ArgumentOutOfRangeException(nameof(happened), happened.GetType().Name, "no such event"),
    };

    private static Trigger Of(Meaning meaning) => meaning switch
    {
        Meaning.ReadingSaid => Trigger.Reading,
        Meaning.ValueAlone => Trigger.ValueAlone,
        Meaning.Answer { Yes: true } => Trigger.Yes,
        Meaning.Answer => Trigger.No,
        Meaning.Correction => Trigger.Correction,
        Meaning.CountSaid => Trigger.CountSaid,
        Meaning.Qualifier => Trigger.Qualifier,
        Meaning.Counting { Word: CountWord.Start or CountWord.StartPulse } => Trigger.StartCount,
        Meaning.Counting { Word: CountWord.Uneven } => Trigger.Uneven,
        Meaning.Counting => Trigger.Seconds,
        Meaning.AboutRound => Trigger.AboutRound,
        Meaning.NotTaken => Trigger.NotTaken,
        Meaning.Hedge => Trigger.Hedge,
        Meaning.Command command => Of(command.Word),
        Meaning.Place => Trigger.Place,
        Meaning.BedAlone => Trigger.BedAlone,
        Meaning.BirthDate => Trigger.BirthDate,
        Meaning.BandNumber => Trigger.BandNumber,
        Meaning.Query => Trigger.Query,
        Meaning.Worried => Trigger.Worried,
        Meaning.NotPossible => Trigger.NotPossible,
        _ => throw new ArgumentOutOfRangeException(nameof(meaning), meaning.GetType().Name, "no such meaning"),
    };

    private static Trigger Of(CommandWord word) => word switch
    {
        CommandWord.Repeat => Trigger.Repeat,
        CommandWord.Help or CommandWord.Options => Trigger.Help,
        CommandWord.GoBack => Trigger.GoBack,
        CommandWord.Cancel => Trigger.Cancel,
        CommandWord.Stop => Trigger.Stop,
        CommandWord.Pause => Trigger.Pause,
        CommandWord.Continue => Trigger.Continue,
        CommandWord.NextResident or CommandWord.Done => Trigger.NextResident,
        CommandWord.WrongResident => Trigger.WrongResident,
        CommandWord.Undo => Trigger.Undo,
        CommandWord.Goodbye => Trigger.Goodbye,
        CommandWord.Unwell or CommandWord.ChestPain => Trigger.Unwell,
        CommandWord.NurseNeeded => Trigger.NurseNeeded,
        CommandWord.Next or CommandWord.Previous => Trigger.NextOrPrevious,
        _ => throw new ArgumentOutOfRangeException(nameof(word), word, "no such command"),
    };
}
