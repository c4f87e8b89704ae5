namespace HandsFree.Core.Dialogue;

/// <summary>Questions that are answered with yes or no.</summary>
internal enum Question
{
    /// <summary>After a stop: measured just now, or before (a late entry)?</summary>
    TakenJustNow,

    /// <summary>A symptom that changes what the rules say.</summary>
    Symptom,

    /// <summary>Asleep: woke to the voice?</summary>
    WokeToVoice,

    /// <summary>Before a posture test: is a second person there?</summary>
    SecondPerson,

    /// <summary>Dizzy, fell, chest pain: heard rightly?</summary>
    Unwell,

    /// <summary>Take back all that was saved in this visit?</summary>
    WrongResident,

    /// <summary>Report a worry?</summary>
    Worried,
}
