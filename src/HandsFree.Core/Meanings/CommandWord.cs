namespace HandsFree.Core.Meanings;

/// <summary>Commands; words of ETSI ES 202 076 where it has the function.</summary>
public enum CommandWord
{
    /// <summary>"Repeat", "read back".</summary>
    Repeat,

    /// <summary>"Help": what can be said, and that the program can't call anybody.</summary>
    Help,

    /// <summary>"Options": what can be said.</summary>
    Options,

    /// <summary>"Go back".</summary>
    GoBack,

    /// <summary>"Cancel".</summary>
    Cancel,

    /// <summary>"Stop".</summary>
    Stop,

    /// <summary>"Pause".</summary>
    Pause,

    /// <summary>"Continue".</summary>
    Continue,

    /// <summary>"Next resident".</summary>
    NextResident,

    /// <summary>"Done".</summary>
    Done,

    /// <summary>"Wrong resident": what was saved in this visit is another's.</summary>
    WrongResident,

    /// <summary>"Undo".</summary>
    Undo,

    /// <summary>"Goodbye".</summary>
    Goodbye,

    /// <summary>"Nurse needed", "call the nurse", "get help", "emergency": the program can't call anybody and says so.</summary>
    NurseNeeded,

    /// <summary>"Next".</summary>
    Next,

    /// <summary>"Previous".</summary>
    Previous,

    /// <summary>"Dizzy", "fell": ends a posture test and is reported now.</summary>
    Unwell,

    /// <summary>"Chest pain": reported now.</summary>
    ChestPain,
}
